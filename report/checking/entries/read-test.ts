/** A bench test as it is typed at a form or on the command line. */
import { type Checked, type FigureName, nearestName, type Problem } from '../../../engine/index.ts'
import { type FieldReader, fieldReader, type TypedFields } from './field-reader.ts'

/** Kinds of bench tests, in the order in which they are mostly done. */
export const testKinds = ['load to hold', 'return after load', 'pinch force', 'cycles'] as const
/** A kind of bench test. */
export type TestKind = (typeof testKinds)[number]

/** What came of a test; `measured` where the value itself is what was found. */
export const testOutcomes = ['did', 'did not', 'measured'] as const
/** What came of a test. */
export type TestOutcome = (typeof testOutcomes)[number]

/** A bench test of one serial number. */
export interface TestEntry {
  readonly kind: 'test'
  readonly serial: string
  readonly test: TestKind
  /** N, of cycles a count. */
  readonly value: number
  readonly outcome: TestOutcome
  /** Figure of the design that was measured, by its id; it is a force. */
  readonly figure?: string
  /** What the rig leaves open either way, N (k = 2). */
  readonly uncertainty?: number
  readonly tested: string
  readonly rig: string
  readonly note?: string
}

/** Fields of a bench test. */
export type TestField = 'test' | 'value' | 'outcome' | 'figure' | 'uncertainty' | 'tested' | 'rig' | 'note'

/** Which set is tested, and the forces among the figures of its design. */
export interface TestAsked {
  readonly serial: string
  readonly figures: readonly Pick<FigureName, 'id' | 'title'>[]
}

/** Reads a bench test. A force without a unit is in N; cycles are a count. A figure is named by its id or its title. */
export function readTestEntry(typed: TypedFields<TestField>, { serial, figures }: TestAsked): Checked<TestEntry> {
  const reader = fieldReader(typed)
  const { problems, words, quantity, day, refuse } = reader
  const test = testKinds.find((one) => one === typed.test)
  const outcome = testOutcomes.find((one) => one === typed.outcome)
  if (test === undefined) refuse('test', { code: 'missing', found: typed.test || 'nothing', needed: testKinds.join(', ') })
  if (outcome === undefined)
    refuse('outcome', { code: 'missing', found: typed.outcome || 'nothing', needed: testOutcomes.join(', ') })
  const asked =
    test === 'cycles'
      ? ({ kind: 'number', bare: '', needed: 'how many cycles were run' } as const)
      : ({ kind: 'force', bare: 'N', needed: 'the load or force' } as const)
  const note = words('note')
  const value = {
    kind: 'test' as const,
    serial,
    value: quantity('value', asked),
    ...measuredOf(typed, { reader, figures }),
    tested: day('tested', 'the day of the test'),
    rig: words('rig', 'on what it was tested'),
    ...(note !== '' && { note }),
  }
  if (problems.length > 0 || test === undefined || outcome === undefined) return { problems }
  return { value: { ...value, test, outcome } }
}

interface MeasuredBy {
  readonly reader: FieldReader<TestField>
  readonly figures: TestAsked['figures']
}

/** The figure that was measured, and what the rig leaves open; neither where none is named. */
function measuredOf(typed: TypedFields<TestField>, { reader, figures }: MeasuredBy): Pick<TestEntry, 'figure' | 'uncertainty'> {
  const { words, quantity, refuse } = reader
  const named = words('figure')
  const open = words('uncertainty')
  if (named === '' && open !== '')
    refuse('figure', {
      code: 'missing',
      found: 'nothing, beside what the rig leaves open',
      needed: 'the figure that was measured',
    })
  if (named === '') return {}
  if (typed.outcome !== 'measured' || typed.test === 'cycles')
    refuse('figure', { code: 'wrong value', found: named, needed: 'none, unless a force was measured' })
  const figure = figures.find(({ id, title }) => id === named || title === named)
  if (figure === undefined) refuse('figure', unknownFigure(named, figures))
  const needed = 'a force that the rig leaves open either way'
  const uncertainty = open === '' ? undefined : quantity('uncertainty', { kind: 'force', bare: 'N', needed, mayBeZero: true })
  return { figure: figure?.id ?? named, ...(uncertainty !== undefined && { uncertainty }) }
}

function unknownFigure(found: string, figures: TestAsked['figures']): Omit<Problem, 'place'> {
  const nearest = nearestName(
    found,
    figures.map(({ id }) => id),
  )
  const needed = 'a force among the figures of the design'
  return { code: 'unknown name', found, needed, ...(nearest !== undefined && { wayOut: `Did you mean ${nearest}?` }) }
}
