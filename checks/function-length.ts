import ts from 'typescript'
import { type HouseRule, isCode, isTest } from './house-rule.ts'
import { nodesBelow, placeOf, syntaxTree } from './syntax.ts'

/** Past this a function holds two ideas; the eye no longer takes it in at once. */
const LONGEST_lines = 40

/** Functions can be read at once. */
export const functionsAreShort: HouseRule = {
  title: `no function is longer than ${LONGEST_lines} lines`,
  appliesTo: (path) => isCode(path) && !isTest(path),
  faults: (file) =>
    [...nodesBelow(syntaxTree(file))].flatMap((node) => {
      if (!ts.isFunctionLike(node) || !('body' in node) || node.body === undefined) return []
      const length_lines = node.getText().split('\n').length
      return length_lines > LONGEST_lines ? [`${placeOf(node)}: ${length_lines} lines`] : []
    }),
  broken: { path: 'engine/long.ts', text: `function long() {\n${'  step()\n'.repeat(LONGEST_lines)}}\n` },
  kept: { path: 'engine/long.ts', text: `function long() {\n${'  step()\n'.repeat(LONGEST_lines - 2)}}\n` },
}
