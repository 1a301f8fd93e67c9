/** Everything that goes to the shop in one zip, with a list of checksums by which the shop sees that nothing was lost on the way. */
import { createHash } from 'node:crypto'
import { setImmediate as nextTurn } from 'node:timers/promises'
import { type Zippable, zipSync } from 'fflate'
import type { ShopDesign } from '../engine/index.ts'
import { type DrawingsAsked, shopFiles } from '../report/index.ts'
import { TypesetFault, type Typesetter } from '../typesetting/index.ts'

/** A file of a pack. */
export interface PackedFile {
  readonly name: string
  readonly bytes: Uint8Array<ArrayBuffer>
}

/** The files, all of them in one zip, and what has no file and why. The same design gives the same bytes. */
export interface ShopPack {
  readonly files: readonly PackedFile[]
  readonly zip: Uint8Array<ArrayBuffer>
  readonly left: readonly string[]
}

/** The earliest moment that a zip can tell: files of a pack have no time of their own. Read in local time, as a zip writes it. */
const NO_TIME = new Date(1980, 0, 1)

/** How a pack is made. */
export interface PackAsked {
  /** Where there is none, or it does not load here, the pack goes without the PDF and says so. */
  readonly typeset?: Typesetter | undefined
  readonly drawings?: DrawingsAsked | undefined
  /** Told before each step. */
  readonly onStep?: ((step: PackStep) => void) | undefined
  /** Ends the work between two steps, and the typesetter at once; the promise is then rejected with its reason. */
  readonly signal?: AbortSignal | undefined
}

/** What is being made, and how many hundredths of all are done. */
export interface PackStep {
  readonly doing: string
  readonly done: number
  readonly of: typeof HUNDREDTHS
  /** Whole seconds that it will still take, by what was done so far; absent before that says anything. */
  readonly remaining_s?: number
}

const HUNDREDTHS = 100
/** Which share of the time is spent before the PDF begins, and before the zip, by what the example took. */
const PDF_from = 0.5
const ZIP_from = 0.95

/** @param shop as it goes to the shop */
export async function shopPack(shop: ShopDesign, packed: PackAsked): Promise<ShopPack> {
  const { typeset, drawings: asked, signal } = packed
  const begin = stepTeller(packed)
  const making = shopFiles(shop, asked)
  let made = making.next()
  for (; made.done !== true; made = making.next()) await begin(made.value.doing, PDF_from * made.value.share)
  const { files: texts, drawings, left } = made.value
  await begin('the drawings as one PDF', PDF_from)
  const pdf = await typesetDrawings(() => typeset?.([drawings], signal && { signal }))
  await begin('checksums and zip', ZIP_from)
  const files: PackedFile[] = [
    ...texts.map(({ name, text }) => ({ name, bytes: Uint8Array.from(Buffer.from(text)) })),
    ...(pdf.bytes === undefined ? [] : [{ name: 'drawings.pdf', bytes: pdf.bytes }]),
  ]
  const sums = files.map(({ name, bytes }) => `${createHash('sha256').update(bytes).digest('hex')}  ${name}\n`).join('')
  const all = [...files, { name: 'checksums.sha256', bytes: Uint8Array.from(Buffer.from(sums)) }]
  const entries: Zippable = Object.fromEntries(all.map(({ name, bytes }) => [name, bytes]))
  return { files: all, zip: zipSync(entries, { mtime: NO_TIME }), left: [...left, ...(pdf.why === undefined ? [] : [pdf.why])] }
}

const MS_PER_S = 1000
/** Before this share is done, and before this time is spent, what is left is a guess. */
const TOLD_FROM_share = 0.1
const TOLD_FROM_ms = 300

/** Tells of each step, and lets others in before it: a reader who has left is noticed only then. */
function stepTeller({ onStep, signal }: PackAsked): (doing: string, share: number) => Promise<void> {
  const begun_ms = performance.now()
  return async (doing, share) => {
    const spent_ms = performance.now() - begun_ms
    const isKnown = share >= TOLD_FROM_share && spent_ms >= TOLD_FROM_ms
    const left = isKnown ? { remaining_s: Math.ceil(((spent_ms / share) * (1 - share)) / MS_PER_S) } : {}
    onStep?.({ doing, done: Math.floor(share * HUNDREDTHS), of: HUNDREDTHS, ...left })
    await nextTurn()
    signal?.throwIfAborted()
  }
}

/** @returns the bytes, or why there are none */
async function typesetDrawings(
  work: () => ReturnType<Typesetter> | undefined,
): Promise<{ readonly bytes?: Uint8Array<ArrayBuffer>; readonly why?: string }> {
  try {
    const typeset = await work()
    if (typeset === undefined) return { why: 'the drawings are not set as a PDF here' }
    return { bytes: typeset[0] }
  } catch (error) {
    if (error instanceof TypesetFault) return { why: error.message }
    throw error
  }
}
