import { type Expression, readExpression } from '../../numbers/expression.ts'

/** The text of an expression with another name for a dimension; every other character stays. */
export function expressionRenamed(typed: string, { from, to }: { readonly from: string; readonly to: string }): string {
  const expression = readExpression(typed)
  if (expression.fault) return typed
  const columns = columnsOf(expression.value, from).sort((one, other) => other - one)
  return columns.reduce((text, column) => text.slice(0, column - 1) + to + text.slice(column - 1 + from.length), typed)
}

/** Columns, from 1, at which a name stands in an expression. */
function columnsOf(expression: Expression, name: string): number[] {
  switch (expression.kind) {
    case 'amount':
      return []
    case 'name':
      return expression.name === name ? [expression.column] : []
    case 'negative':
      return columnsOf(expression.of, name)
    case 'operation':
      return [...columnsOf(expression.left, name), ...columnsOf(expression.right, name)]
    case 'call':
      return expression.of.flatMap((argument) => columnsOf(argument, name))
  }
}
