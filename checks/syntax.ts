import ts from 'typescript'
import type { SourceFile } from './source-file.ts'

/** A code file as a syntax tree with parents. */
export function syntaxTree({ path, text }: SourceFile): ts.SourceFile {
  return ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS)
}

/** Every node below this one, outer before inner. */
export function* nodesBelow(node: ts.Node): Generator<ts.Node> {
  for (const child of node.getChildren()) {
    yield child
    yield* nodesBelow(child)
  }
}

/** `path:line` of a node. */
export function placeOf(node: ts.Node): string {
  const file = node.getSourceFile()
  return `${file.fileName}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}`
}
