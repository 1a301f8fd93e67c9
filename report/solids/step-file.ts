/**
 * A solid as a STEP file, for a shop that machines from one.
 *
 * SOURCE standard: ISO 10303-21 and -214 (AUTOMOTIVE_DESIGN), from memory. The file carries no date, so that the same solid gives the same bytes.
 */
import { writeSolid } from './body-shell.ts'
import type { FlatBody } from './flat-body.ts'
import { StepText, stepList, stepReal, stepString } from './step-text.ts'

/** Points nearer than this are one, for who reads the file. */
const UNCERTAINTY_mm = 1e-6

/** @param name of the part, as the file and the product in it are called */
export function stepFile(name: string, bodies: readonly FlatBody[]): string {
  const text = new StepText()
  const solids = bodies.map((body) => writeSolid(text, body))
  const context = geometryContext(text)
  const shape = text.add('ADVANCED_BREP_SHAPE_REPRESENTATION', stepString(name), stepList([...solids, origin(text)]), context)
  text.add('SHAPE_DEFINITION_REPRESENTATION', product(text, name), shape)
  const head = [
    'ISO-10303-21;',
    'HEADER;',
    `FILE_DESCRIPTION((${stepString('a part of a mechanical finger')}),'2;1');`,
    `FILE_NAME(${stepString(`${name}.step`)},'1970-01-01T00:00:00',(''),(''),'','Fingerwright','');`,
    "FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));",
    'ENDSEC;',
    'DATA;',
  ]
  return `${[...head, ...text.lines, 'ENDSEC;', 'END-ISO-10303-21;'].join('\n')}\n`
}

/** Millimetres and radians. */
function geometryContext(text: StepText): string {
  const length = text.complex('(LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MILLI.,.METRE.))')
  const angle = text.complex('(NAMED_UNIT(*) PLANE_ANGLE_UNIT() SI_UNIT($,.RADIAN.))')
  const solidAngle = text.complex('(NAMED_UNIT(*) SI_UNIT($,.STERADIAN.) SOLID_ANGLE_UNIT())')
  const measure = `LENGTH_MEASURE(${stepReal(UNCERTAINTY_mm)})`
  const near = text.add('UNCERTAINTY_MEASURE_WITH_UNIT', measure, length, stepString('distance_accuracy_value'), stepString(''))
  const units = `GLOBAL_UNIT_ASSIGNED_CONTEXT((${length},${angle},${solidAngle}))`
  const uncertain = `GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT((${near}))`
  return text.complex(`(GEOMETRIC_REPRESENTATION_CONTEXT(3) ${uncertain} ${units} REPRESENTATION_CONTEXT('',''))`)
}

function origin(text: StepText): string {
  const place = text.add('CARTESIAN_POINT', stepString(''), stepList([0, 0, 0].map(stepReal)))
  const up = text.add('DIRECTION', stepString(''), stepList([0, 0, 1].map(stepReal)))
  const ahead = text.add('DIRECTION', stepString(''), stepList([1, 0, 0].map(stepReal)))
  return text.add('AXIS2_PLACEMENT_3D', stepString(''), place, up, ahead)
}

/** What the file is of: a product with one version of its shape. */
function product(text: StepText, name: string): string {
  const application = text.add('APPLICATION_CONTEXT', stepString('automotive design'))
  text.add(
    'APPLICATION_PROTOCOL_DEFINITION',
    stepString('international standard'),
    stepString('automotive_design'),
    '2000',
    application,
  )
  const context = text.add('PRODUCT_CONTEXT', stepString(''), application, stepString('mechanical'))
  const thing = text.add('PRODUCT', stepString(name), stepString(name), stepString(''), stepList([context]))
  text.add('PRODUCT_RELATED_PRODUCT_CATEGORY', stepString('part'), '$', stepList([thing]))
  const version = text.add('PRODUCT_DEFINITION_FORMATION', stepString(''), stepString(''), thing)
  const stage = text.add('PRODUCT_DEFINITION_CONTEXT', stepString('part definition'), application, stepString('design'))
  const definition = text.add('PRODUCT_DEFINITION', stepString('design'), stepString(''), version, stage)
  return text.add('PRODUCT_DEFINITION_SHAPE', stepString(''), stepString(''), definition)
}
