import { shownFigure, type Working, type WorkingValue } from '../engine/index.ts'
import { setValue } from '../report/index.ts'
import { aligned, wrapped } from './columns.ts'
import { plainFormula } from './plain-formula.ts'

const INDENT = '      '

/** The working of one figure: the idea, the formulas, what went in, what came between, where it is from. */
export function workingLines({ method, formulas, inputs, steps, source }: Working): readonly string[] {
  return [
    wrapped(method, INDENT),
    ...formulas.map((formula) => `${INDENT}  ${plainFormula(formula)}`),
    ...valueLines('from', inputs),
    ...valueLines('steps', steps),
    wrapped(`source: ${source}`, INDENT),
  ]
}

function valueLines(heading: string, values: readonly WorkingValue[]): readonly string[] {
  if (values.length === 0) return []
  const rows = values.map(({ name, value, unit, digits, from }) => {
    const set = digits === undefined ? setValue(value, unit) : shownFigure(value, unit, { digits })
    return [
      { text: name, side: 'left' as const },
      { text: set.number, side: 'right' as const },
      { text: set.unit, side: 'left' as const },
      { text: from ?? '', side: 'left' as const },
    ]
  })
  return [`${INDENT}${heading}:`, ...aligned(rows).map((line) => `${INDENT}${line}`)]
}
