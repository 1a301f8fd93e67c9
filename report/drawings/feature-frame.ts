/**
 * Frames of geometrical tolerances and datum letters, drawn from the rules of ISO 1101 and ISO 5459 (from memory): cells from left to right
 * hold the symbol, the zone, and the datums in their order.
 */
import { type At, frame, type Ink, lettering_mm, say, stroke, widthOf } from './ink.ts'
import { lengthText } from './size-words.ts'

/** A tolerance of place (a round zone), or of the profile of a line (a zone along it). */
export interface FeatureFrame {
  readonly of: 'position' | 'profile'
  readonly zone_mm: number
  /** The zone grows by what the hole is larger than its least size: M in a circle. */
  readonly hasBonus?: boolean
  readonly datums: readonly string[]
}

/** Height of a frame: twice its letters. */
export const frameHeight = 5.6
const SYMBOL = 6
const LETTER = 5
const SIDE = 1

/** Width that a frame takes. */
export function frameWidth({ of, zone_mm, hasBonus, datums }: FeatureFrame): number {
  return SYMBOL + zoneWidth({ of, zone_mm, hasBonus: hasBonus === true }) + LETTER * datums.length
}

/** @param at upper left corner */
export function drawFrame(tolerance: FeatureFrame, at: At): readonly Ink[] {
  const { of, zone_mm, hasBonus = false, datums } = tolerance
  const width = frameWidth(tolerance)
  const base = at.y + frameHeight - (frameHeight - lettering_mm.value * 0.66) / 2
  const zoneEnd = at.x + SYMBOL + zoneWidth({ of, zone_mm, hasBonus })
  const cells = [at.x + SYMBOL, ...datums.map((_, index) => zoneEnd + LETTER * index)]
  return [
    ...frame({ left: at.x, top: at.y, right: at.x + width, bottom: at.y + frameHeight }),
    ...cells.map((x) => stroke({ x, y: at.y }, { x, y: at.y + frameHeight })),
    ...symbol(of, { x: at.x + SYMBOL / 2, y: at.y + frameHeight / 2 }),
    say(zoneWords(of, zone_mm), { x: at.x + SYMBOL + SIDE, y: base }),
    ...(hasBonus ? bonus({ x: zoneEnd - SIDE - BONUS, y: at.y + frameHeight / 2 }) : []),
    ...datums.map((letter, index) => say(letter, { x: zoneEnd + LETTER * (index + 0.5), y: base }, { side: 'middle' })),
  ]
}

/** A datum letter in its frame. @param at upper left corner */
export function drawDatum(letter: string, at: At): readonly Ink[] {
  const base = at.y + frameHeight - (frameHeight - lettering_mm.value * 0.66) / 2
  return [
    ...frame({ left: at.x, top: at.y, right: at.x + LETTER, bottom: at.y + frameHeight }),
    say(letter, { x: at.x + LETTER / 2, y: base }, { side: 'middle', heavy: true }),
  ]
}

/** Radius of the circle about M. */
const BONUS = 1.9

function zoneWidth({ of, zone_mm, hasBonus }: { of: FeatureFrame['of']; zone_mm: number; hasBonus: boolean }): number {
  return widthOf(zoneWords(of, zone_mm), lettering_mm.value) + 2 * SIDE + (hasBonus ? 2 * BONUS + SIDE : 0)
}

function zoneWords(of: FeatureFrame['of'], zone_mm: number): string {
  return `${of === 'position' ? 'Ø' : ''}${lengthText(zone_mm)}`
}

function bonus(middle: At): readonly Ink[] {
  const letter = say('M', { x: middle.x, y: middle.y + 1 }, { side: 'middle', size: lettering_mm.table })
  return [{ kind: 'circle', at: middle, radius: BONUS, type: 'narrow' }, letter]
}

/** Position: a circle with a cross through it. Profile of a line: an arch. */
function symbol(of: FeatureFrame['of'], { x, y }: At): readonly Ink[] {
  if (of === 'position') {
    return [
      { kind: 'circle', at: { x, y }, radius: 1.2, type: 'narrow' },
      stroke({ x: x - 2, y }, { x: x + 2, y }),
      stroke({ x, y: y - 2 }, { x, y: y + 2 }),
    ]
  }
  const foot = y + 1.2
  const arch = Array.from({ length: ARCH + 1 }, (_, index): At => {
    const angle = (Math.PI * index) / ARCH
    return { x: x - 2 * Math.cos(angle), y: foot - 2.2 * Math.sin(angle) }
  })
  return arch.slice(1).map((to, index) => stroke(arch[index], to))
}

const ARCH = 12
