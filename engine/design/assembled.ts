import type { Design } from './design.ts'
import { figureScope } from './figure-scope.ts'
import { reportMissingThickness } from './missing-thickness.ts'
import { readRiskScales, readRisks } from './proving/read-risks.ts'
import { readBenchTests, readDemands } from './proving/read-shown-by.ts'
import { readCoatings } from './read-coatings.ts'
import { readDimensions } from './read-dimensions.ts'
import { readDrive, readRelease } from './read-drive.ts'
import { readFactors } from './read-factors.ts'
import { readGrease } from './read-grease.ts'
import { readStops, type Workbench } from './read-joints.ts'
import { readLoadCases, readToggles, readWeight } from './read-loads.ts'
import { readBought, readMaking, readOrders } from './read-making.ts'
import { readFrictionPairs, readMaterials } from './read-materials.ts'
import { withWear } from './read-pair-wear.ts'
import { readParts } from './read-parts.ts'
import { readPins, reportUnplacedParts } from './read-pins.ts'
import { readRequirements } from './read-requirements.ts'
import { readGivesWay, readUse } from './read-use.ts'
import { readGeneralTolerance, readVariationRules } from './read-variation-rules.ts'
import { readWearRates } from './read-wear-rates.ts'
import type { Reading } from './reading.ts'
import { References } from './references.ts'
import { reportCoatedSizes } from './report-coated-sizes.ts'
import { reportPressFits } from './report-press-fits.ts'
import { readScrews } from './screws/read-screws.ts'
import { readSprings } from './springs/read-springs.ts'

/**
 * Turns the typed values of a document into a design.
 *
 * @param reading takes what is found at fault; with any problem the design is not to be used
 * @returns undefined only when a section is missing that a problem names
 */
export function assembled(reading: Reading, name: string): Design | undefined {
  const { document } = reading
  const { bench, ...made } = madeSections(reading)
  reportCoatedSizes(reading, made)
  reportPressFits(reading, made)
  const stated = statedOnly(bench)
  const { parts, pins, stops, springs, drive } = made
  const grease = readGrease({ reading, pins, stops, springs })
  const benchTests = readBenchTests(reading)
  const requirements = readRequirements({ reading, tests: benchTests }, figureScope(document, pins))
  reportMissingThickness(reading, { ...made, requirements })
  const riskScales = readRiskScales(reading)
  const rest = {
    ...(grease && { grease }),
    requirements,
    benchTests,
    demands: readDemands({ reading, tests: benchTests }),
    ...(riskScales && { riskScales }),
    risks: readRisks({ reading, scales: riskScales, requirements }),
    orders: readOrders({ reading, parts, pins, springs }),
    bought: readBought(reading),
  }
  if (document.title === undefined || !drive) return undefined
  return {
    name,
    title: reading.line('title', document.title),
    note: reading.text('note', document.note ?? ''),
    ...stated,
    ...made,
    drive,
    ...rest,
  }
}

/**
 * The design again, with the sizes of one set: what is made of metal is read anew, what is asked of it and said about it stays.
 *
 * @param reading of the same document, with other sizes
 */
export function reassembled(reading: Reading, kept: Design): Design | undefined {
  const { bench: _, drive, ...made } = madeSections(reading)
  return drive && { ...kept, ...made, drive }
}

/** The sections that hold sizes, with the bench that the others are read on. */
function madeSections(reading: Reading) {
  const dimensions = readDimensions(reading)
  const materials = readMaterials(reading)
  const frictionPairs = withWear(reading, { pairs: readFrictionPairs(reading), rates: readWearRates(reading) })
  const coatings = readCoatings(reading)
  const rows = { reading, materials, coatings }
  const parts = readParts(rows)
  const shelf = { ...rows, frictionPairs, parts }
  const pins = readPins(shelf)
  reportUnplacedParts(pins, shelf)
  const bench: Workbench = { ...shelf, pins, find: new References(reading, parts, pins) }
  return {
    bench,
    dimensions,
    frictionPairs: [...frictionPairs.values()],
    parts,
    pins,
    drive: readDrive(bench),
    stops: readStops(bench),
    springs: readSprings(bench),
    loadCases: readLoadCases(bench),
    toggles: readToggles(bench),
  }
}

/** What is absent from the design when the document does not state it. */
function statedOnly(bench: Workbench): Partial<Design> {
  const release = readRelease(bench)
  const weight = readWeight(bench)
  const generalTolerance = readGeneralTolerance(bench.reading)
  const variation = readVariationRules(bench.reading)
  const screws = readScrews(bench)
  const use = readUse(bench)
  const givesWay = readGivesWay(bench)
  const factors = readFactors(bench.reading)
  const making = readMaking(bench.reading)
  const typedTip = bench.reading.document.tip
  const tip = typedTip === undefined ? undefined : bench.find.pad('tip', typedTip)
  return {
    ...(generalTolerance && { generalTolerance }),
    ...(variation && { variation }),
    ...(release && { release }),
    ...(weight && { weight }),
    ...(screws && { screws }),
    ...(use && { use }),
    ...(givesWay && { givesWay }),
    ...(factors && { factors }),
    ...(tip && { tip }),
    ...(making && { making }),
  }
}
