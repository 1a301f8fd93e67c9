import type { Design } from './design.ts'
import { figureScope } from './figure-scope.ts'
import { readCoatings } from './read-coatings.ts'
import { readDimensions } from './read-dimensions.ts'
import { readDrive, readRelease } from './read-drive.ts'
import { readStops, type Workbench } from './read-joints.ts'
import { readLoadCases, readToggles, readWeight } from './read-loads.ts'
import { readBought, readMaking, readOrders } from './read-making.ts'
import { readFrictionPairs, readMaterials } from './read-materials.ts'
import { withWear } from './read-pair-wear.ts'
import { readParts } from './read-parts.ts'
import { readPins, reportUnplacedParts } from './read-pins.ts'
import { readRequirements } from './read-requirements.ts'
import { readGivesWay, readUse } from './read-use.ts'
import { readGeneralTolerance, readVariation } from './read-variation.ts'
import { readWearRates } from './read-wear-rates.ts'
import type { Reading } from './reading.ts'
import { References } from './references.ts'
import { readSprings } from './springs/read-springs.ts'

/**
 * Turns the typed values of a document into a design.
 *
 * @param reading takes what is found at fault; with any problem the design is not to be used
 * @returns undefined only when a section is missing that a problem names
 */
export function assembled(reading: Reading, name: string): Design | undefined {
  const { document } = reading
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
  const drive = readDrive(bench)
  const stated = statedOnly(bench)
  const springs = readSprings(bench)
  const rest = {
    stops: readStops(bench),
    springs,
    loadCases: readLoadCases(bench),
    toggles: readToggles(bench),
    requirements: readRequirements(reading, figureScope(document, pins)),
    orders: readOrders({ reading, parts, pins, springs }),
    bought: readBought(reading),
  }
  if (document.title === undefined || !drive) return undefined
  return {
    name,
    title: reading.line('title', document.title),
    note: reading.text('note', document.note ?? ''),
    dimensions,
    frictionPairs: [...frictionPairs.values()],
    parts,
    pins,
    drive,
    ...stated,
    ...rest,
  }
}

/** What is absent from the design when the document does not state it. */
function statedOnly(bench: Workbench): Partial<Design> {
  const release = readRelease(bench)
  const weight = readWeight(bench)
  const generalTolerance = readGeneralTolerance(bench.reading)
  const variation = readVariation(bench.reading)
  const use = readUse(bench)
  const givesWay = readGivesWay(bench)
  const making = readMaking(bench.reading)
  const typedTip = bench.reading.document.tip
  const tip = typedTip === undefined ? undefined : bench.find.pad('tip', typedTip)
  return {
    ...(generalTolerance && { generalTolerance }),
    ...(variation && { variation }),
    ...(release && { release }),
    ...(weight && { weight }),
    ...(use && { use }),
    ...(givesWay && { givesWay }),
    ...(tip && { tip }),
    ...(making && { making }),
  }
}
