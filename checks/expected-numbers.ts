import ts from 'typescript'
import { type HouseRule, isTest } from './house-rule.ts'
import { nodesBelow, placeOf, syntaxTree } from './syntax.ts'

/** Numbers that count or index rather than come from somewhere: nothing, one, and the empty. */
const PLAIN: ReadonlySet<string> = new Set(['0', '1'])

/** A test file that expects numbers says where they come from. */
export const expectedNumbersHaveASource: HouseRule = {
  title: 'every test file that expects numbers names their SOURCE',
  appliesTo: isTest,
  faults: (file) => {
    if (file.text.includes('SOURCE ')) return []
    const numbers = [...nodesBelow(syntaxTree(file))].filter(isExpectedNumber)
    return numbers.slice(0, 1).map((node) => `${placeOf(node)}: expects ${node.getText()} without a SOURCE in the file`)
  },
  broken: { path: 'engine/sum.test.ts', text: 'expect(sum(2, 2)).toBeCloseTo(4.5)' },
  kept: { path: 'engine/sum.test.ts', text: '// SOURCE hand (2 + 2.5)\nexpect(sum(2, 2.5)).toBeCloseTo(4.5)\n' },
}

function isExpectedNumber(node: ts.Node): boolean {
  if (!ts.isNumericLiteral(node) || PLAIN.has(node.text)) return false
  for (let above: ts.Node = node; above.parent !== undefined; above = above.parent) {
    if (ts.isCallExpression(above.parent) && above.parent.arguments.some((given) => given === above)) {
      return isMatcher(above.parent)
    }
    if (ts.isFunctionLike(above.parent)) return false
  }
  return false
}

/** `expect(…).toX(…)`, with `.not` or the like between. */
function isMatcher(call: ts.CallExpression): boolean {
  return ts.isPropertyAccessExpression(call.expression) && /^expect\(/.test(call.expression.getText())
}
