/**
 * Text of a design file → Design, or every problem that stands in its way.
 *
 *     text ─▶ JSON ─▶ structure ─▶ dimensions ─▶ materials, friction ─▶ parts ─▶ pins ─▶ the rest
 *
 * Each step reports what it finds and passes on what is sound, so that one reading names all problems of a file.
 * Nothing is corrected silently.
 */
import { limits } from '../numbers/limits.ts'
import { assembled, reassembled } from './assembled.ts'
import { tooManyThings } from './counts.ts'
import type { Design } from './design.ts'
import type { Document } from './document.ts'
import { linesOf } from './json-places.ts'
import { readJson } from './json-text.ts'
import { asTyped, type OtherSizes } from './other-sizes.ts'
import type { Checked, Problem } from './problem.ts'
import { Reading } from './reading.ts'
import { readStructure } from './structure.ts'

/**
 * Reads a design document.
 *
 * @param text of the file, JSON in the format `fingerwright-design/1`
 * @param name that the door gives it, usually the file's name without its ending
 * @returns the design in inside units, or its problems in the order of reading, at most `limits.problems` and a last one that says that there are more
 */
export function readDesign(text: string, name = 'design'): Checked<Design> {
  const { value, problems } = readRecipe(text, name)
  return value ? { value: value.design } : { problems }
}

/** A design with the document that it was read from, so that it can be made again with other sizes. */
export interface Recipe {
  readonly design: Design
  readonly document: Document
  /** The design with other sizes; problems where they go against one another, such as a pin that is thicker than its hole. */
  readonly made: (other: OtherSizes) => Checked<Design>
}

/** Reads a design document, as `readDesign` does, and keeps what is needed to read it again. */
export function readRecipe(text: string, name = 'design'): Checked<Recipe> {
  const unreadable = refusedText(text)
  if (unreadable) return { problems: [unreadable] }
  const json = readJson(text)
  if (json.value === undefined) return { problems: json.problems }
  const tooMany = tooManyThings(json.value)
  if (tooMany.length > 0) return { problems: listedProblems([...json.problems, ...tooMany], text) }
  const structure = readStructure(json.value)
  const reading = new Reading(structure, asTyped)
  const design = assembled(reading, name)
  const problems = [...json.problems, ...reading.problems]
  if (problems.length > 0 || !design) return { problems: listedProblems(problems, text) }
  const made = (other: OtherSizes): Checked<Design> => {
    const again = new Reading(structure, other)
    const value = reassembled(again, design)
    return again.problems.length > 0 || !value ? { problems: again.problems } : { value }
  }
  return { value: { design, document: structure.document, made } }
}

/** The first problems, each with its line, and one more that says that there are more. */
export function listedProblems(problems: readonly Problem[], text: string): readonly Problem[] {
  const lines = linesOf(text)
  const first = problems.slice(0, limits.problems).map((problem) => withLine(problem, lines))
  if (problems.length <= limits.problems) return first
  const more = {
    code: 'too many',
    place: '',
    found: 'further problems',
    needed: 'a file without problems',
    wayOut: 'Mend those above first.',
  }
  return [...first, more]
}

/** A key that is missing has no line; then that of what it is missing in. */
function withLine(problem: Problem, lines: ReadonlyMap<string, number>): Problem {
  if (problem.line !== undefined) return problem
  for (let place = problem.place; place !== ''; place = place.slice(0, Math.max(0, place.lastIndexOf('.')))) {
    const line = lines.get(place)
    if (line !== undefined) return { ...problem, line }
  }
  return problem
}

function refusedText(text: string): Problem | undefined {
  const bytes = utf8Bytes(text)
  if (bytes > limits.fileBytes) {
    return { code: 'too large', place: '', found: `${bytes} bytes`, needed: `at most ${limits.fileBytes} bytes` }
  }
  if (text.startsWith('\ufeff')) {
    const wayOut = 'Save it as UTF-8 without byte order mark.'
    return { code: 'no JSON', place: 'line 1, column 1', found: 'a byte order mark', needed: 'an opening brace {', wayOut }
  }
  return undefined
}

/** Bytes of the text in UTF-8, 1 to 3 for a code unit and 4 for a surrogate pair; its code units where that says enough about the limit. */
function utf8Bytes(text: string): number {
  // No text of a third of them needs counting.
  if (text.length > limits.fileBytes || 3 * text.length <= limits.fileBytes) return text.length
  let bytes = 0
  for (let index = 0; index < text.length; index++) {
    const code = text.charCodeAt(index)
    const isSurrogate = code >= 0xd800 && code <= 0xdfff
    bytes += code < 0x80 ? 1 : code < 0x800 || isSurrogate ? 2 : 3
  }
  return bytes
}
