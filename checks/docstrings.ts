import ts from 'typescript'
import { type HouseRule, isCode, isTest } from './house-rule.ts'
import { placeOf, syntaxTree } from './syntax.ts'

/** Exported functions, values and classes say what they mean; types are left to their names. */
export const exportsSayWhatTheyMean: HouseRule = {
  title: 'every exported function, value and class has a docstring',
  appliesTo: (path) => isCode(path) && !isTest(path) && !/\.config\.ts$/.test(path) && !/(^|\/)tests?(-support)?\//.test(path),
  faults: (file) =>
    syntaxTree(file)
      .statements.filter((statement) => isExportedValue(statement) && !hasDocstring(statement))
      .map((statement) => `${placeOf(statement)}: ${statement.getText().split('\n')[0]}`),
  broken: { path: 'engine/sum.ts', text: '// adds\nexport function sum(): number {\n  return 0\n}\n' },
  kept: { path: 'engine/sum.ts', text: '/** Nothing, in mm. */\nexport const sum_mm = 0\n\nexport interface Sum {}\n' },
}

function isExportedValue(node: ts.Statement): boolean {
  const declares = ts.isFunctionDeclaration(node) || ts.isVariableStatement(node) || ts.isClassDeclaration(node)
  return declares && (ts.getModifiers(node) ?? []).some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword)
}

function hasDocstring(node: ts.Node): boolean {
  return ts.getJSDocCommentsAndTags(node).length > 0
}
