import type { JsonValue } from './change.ts'
import { holds } from './value-at.ts'

/** Objects and lists longer than this are broken into a line for each of their entries. */
const lineLength = 120
const step = '  '

/** A value as JSON text, laid out as people write a design: short things on one line, long ones broken and indented. */
export function laidOut(value: JsonValue, indent = ''): string {
  const line = onOneLine(value)
  if (!holds(value) || indent.length + line.length <= lineLength) return line
  const inner = indent + step
  if (Array.isArray(value))
    return broken(
      value.map((item) => laidOut(item, inner)),
      { brackets: '[]', indent },
    )
  const entries = Object.entries(value).map(([key, item]) => `${JSON.stringify(key)}: ${laidOut(item, inner)}`)
  return broken(entries, { brackets: '{}', indent })
}

function broken(
  entries: readonly string[],
  { brackets, indent }: { readonly brackets: string; readonly indent: string },
): string {
  const lines = entries.map((entry) => `${indent}${step}${entry}`).join(',\n')
  return `${brackets[0]}\n${lines}\n${indent}${brackets[1]}`
}

function onOneLine(value: JsonValue): string {
  if (!holds(value)) return JSON.stringify(value)
  if (Array.isArray(value)) return `[${value.map(onOneLine).join(', ')}]`
  const entries = Object.entries(value).map(([key, item]) => `${JSON.stringify(key)}: ${onOneLine(item)}`)
  return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`
}
