import type { SourceFile } from './source-file.ts'

/** A rule of the house that can be read off a single file. */
export interface HouseRule {
  /** States what holds for every file. */
  readonly title: string
  readonly appliesTo: (path: string) => boolean
  /** What breaks the rule, each with its line; empty when the file keeps it. */
  readonly faults: (file: SourceFile) => readonly string[]
  /** A file that breaks the rule: proof that the check can fail. */
  readonly broken: SourceFile
  /** A file that comes near and keeps it. */
  readonly kept: SourceFile
}

/** Whether a path is code, tests included. */
export function isCode(path: string): boolean {
  return /\.(tsx?|mjs)$/.test(path)
}

/** Whether a path is a test. */
export function isTest(path: string): boolean {
  return /\.test\.tsx?$/.test(path)
}

/** Lines that match, as `path:line: text`. */
export function linesThatMatch({ path, text }: SourceFile, pattern: RegExp): readonly string[] {
  return text.split('\n').flatMap((line, index) => (pattern.test(line) ? [`${path}:${index + 1}: ${line.trim()}`] : []))
}
