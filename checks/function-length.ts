import ts from 'typescript'
import { type HouseRule, isCode, isTest } from './house-rule.ts'
import { nodesBelow, placeOf, syntaxTree } from './syntax.ts'

/** Past this a function holds two ideas; the eye no longer takes it in at once. */
const LONGEST_lines = 40

/** Functions can be read at once. */
export const functionsAreShort: HouseRule = {
  title: `no function is longer than ${LONGEST_lines} lines, markup apart`,
  appliesTo: (path) => isCode(path) && !isTest(path),
  faults: (file) =>
    [...nodesBelow(syntaxTree(file))].flatMap((node) => {
      if (!ts.isFunctionLike(node) || !('body' in node) || node.body === undefined) return []
      const length_lines = linesOf(node) - markupLines(node.body as ts.Node)
      return length_lines > LONGEST_lines ? [`${placeOf(node)}: ${length_lines} lines`] : []
    }),
  broken: { path: 'engine/long.ts', text: `function long() {\n${'  step()\n'.repeat(LONGEST_lines)}}\n` },
  kept: { path: 'engine/long.ts', text: `function long() {\n${'  step()\n'.repeat(LONGEST_lines - 2)}}\n` },
}

function linesOf(node: ts.Node): number {
  return node.getText().split('\n').length
}

/** Lines of markup beyond one each: it is a picture of the page rather than steps to be followed. */
function markupLines(node: ts.Node): number {
  if (ts.isJsxElement(node) || ts.isJsxSelfClosingElement(node) || ts.isJsxFragment(node)) return linesOf(node) - 1
  return node.getChildren().reduce((sum, child) => sum + markupLines(child), 0)
}
