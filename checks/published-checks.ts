/** What the tests hold the program against outside of itself, collected from the origins beside their expected numbers. */
import ts from 'typescript'
import { isTest } from './house-rule.ts'
import type { SourceFile } from './source-file.ts'
import { nodesBelow, syntaxTree } from './syntax.ts'

/** Whether somebody has read the page that a number is from, or a copy of it, or remembers it. */
export type HowKnown = 'read' | 'read in part' | 'read as quoted elsewhere' | 'from memory'

/** One published value or worked example that a test is held against. */
export interface PublishedCheck {
  /** Folder of the engine. */
  readonly subject: string
  /** What the test states. */
  readonly states: string
  /** Author, work, place, and the numbers as the test names them. */
  readonly source: string
  readonly known: HowKnown
}

/** Sorts of origin that were published; numbers worked out by hand or by another program are counted, not listed. */
const PUBLISHED = /^(book|standard|paper|dataset)\b[:,]?\s*/

/** Where something is calculated; elsewhere a standard names the answers of a server or the form of a file. */
const CALCULATES = /^engine\//

/** Every published check of the project, by subject, in the order of the files. */
export function publishedChecks(files: readonly SourceFile[]): readonly PublishedCheck[] {
  return calculating(files).flatMap((file) =>
    originsIn(file).flatMap(({ origin, at }) => {
      if (!PUBLISHED.test(origin)) return []
      const known = howKnown(origin)
      const source = tidied(origin.replace(PUBLISHED, ''), known)
      return [{ subject: subjectOf(file.path), states: statedAround(file, at), source, known }]
    }),
  )
}

/** Sorts of origin that were not published, and how many expected numbers have each. */
export function otherOrigins(files: readonly SourceFile[]): Readonly<Record<OtherOrigin, number>> {
  const all = calculating(files).flatMap(originsIn)
  const count = (sort: string) => all.filter(({ origin }) => origin.startsWith(sort)).length
  return { hand: count('hand'), property: count('property'), otherMethod: count('other-method') }
}

/** By hand; as a law of nature or of numbers; by another program or another method. */
export type OtherOrigin = 'hand' | 'property' | 'otherMethod'

function calculating(files: readonly SourceFile[]): readonly SourceFile[] {
  const tests = files.filter(({ path }) => isTest(path) && CALCULATES.test(path))
  return tests.toSorted((one, other) => (one.path < other.path ? -1 : 1))
}

function subjectOf(path: string): string {
  const [, folder = '', inner] = path.split('/')
  return inner === undefined ? 'evaluate' : folder
}

interface Origin {
  readonly origin: string
  readonly at: number
}

/** Texts that follow `SOURCE `, each to the end of its comment or to the next one. */
function originsIn({ text }: SourceFile): readonly Origin[] {
  const comments = [...text.matchAll(/\/\/ ?.*(?:\n[ \t]*\/\/ ?.*)*|\/\*[\s\S]*?\*\//g)]
  return comments.flatMap(({ 0: comment, index }) => {
    const words = comment.replace(/^[ \t]*(\/\/|\/?\*+\/?)[ \t]?/gm, '').replace(/\s*\*\/$/, '')
    return words
      .split(/SOURCE /)
      .slice(1)
      .map((origin) => ({ origin, at: index }))
  })
}

/** What the test around a place states, with its group before it; where a comment stands before the tests, the first that follows it. */
function statedAround(file: SourceFile, at: number): string {
  const titled = [...nodesBelow(syntaxTree(file))].filter(isTitled)
  const around = titled.filter((node) => node.getStart() < at && at < node.end)
  const titles = (around.length > 0 ? around : titled.filter((node) => node.getStart() > at).slice(0, 1)).map(titleOf)
  return titles.filter((title) => title !== PLACE).join(' ')
}

/** What stands in a title for what each row puts there. */
const PLACE = '…'

function titleOf(node: ts.CallExpression): string {
  return (node.arguments[0] as ts.StringLiteralLike).text.replace(/%[sdifj]|\$\w+/g, PLACE)
}

function isTitled(node: ts.Node): node is ts.CallExpression {
  if (!ts.isCallExpression(node) || !/^(it|describe)\b/.test(node.expression.getText())) return false
  return node.arguments.length > 1 && ts.isStringLiteralLike(node.arguments[0])
}

/** Brackets around the citation at the beginning, with brackets inside of them. */
const BRACKETED = /^\(((?:[^()]|\([^()]*\))*)\)/

/** How tests say that a page was read in somebody's quotation of it. */
const QUOTED = /,? (by a notebook that quotes it|(via|through) open textbook-companion notebooks)/i

/** The words of an origin on one line, without what `known` says already. */
function tidied(origin: string, known: HowKnown): string {
  const line = origin.replace(/\s+/g, ' ').replace(BRACKETED, '$1').replace(QUOTED, '').trim()
  const said =
    known === 'from memory' ? line.replace(/[,;] from memory(?=[:;,.]|$)/, '') : line.replace(/, read(?=[:;,.]|$)/i, '')
  return said.replace(/[;,.]+$/, '')
}

/** What nobody says to have read counts as recalled. */
function howKnown(origin: string): HowKnown {
  const isRecalled = /from memory/i.test(origin)
  const isQuoted = QUOTED.test(origin) || /as quoted|the standard not seen/i.test(origin)
  const isRead = isQuoted || /\bread\b/i.test(origin)
  if (isRecalled || !isRead) return isRead ? 'read in part' : 'from memory'
  return isQuoted ? 'read as quoted elsewhere' : 'read'
}
