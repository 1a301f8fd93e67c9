/**
 * What a finger does when one of its pins, parts or springs gives way.
 *
 * What is left is judged by the mechanism, at postures from open to closed as it stood before:
 *
 *     joined    which parts still hang on the mount; the others are loose pieces
 *     limp      which of them can move although the drive is held
 *     opens     whether the springs that are left drive it open (broken-motion.ts)
 */
import type { Design, Member, Spring } from '../design/design.ts'
import { evenNodes } from '../motion/even-nodes.ts'
import type { Joint } from '../motion/mechanism.ts'
import { type Broken, limpParts, takenAt, type Whole } from './broken-motion.ts'

/** How a broken finger behaves, the gravest first. */
export type Outcome = 'comes apart' | 'stays closed' | 'goes limp' | 'opens in part' | 'opens'

/** What becomes of a finger when one member gives way. */
export interface Breakage {
  readonly member: Member
  readonly outcome: Outcome
  /** Part indices that are no longer joined to the mount. */
  readonly loose: readonly number[]
  /** Part indices that move although the drive is held. */
  readonly limp: readonly number[]
  /** What friction and drag take of what the springs give, the most on the way: below 1 they open it. Absent where no spring opens what is left. */
  readonly taken_ratio?: number
}

/** Postures that are looked at. */
export const BROKEN_POSTURES = 9

/** Everything that can give way: pins, parts but the mount, springs, in the order of the document. */
export function breakages(whole: Whole): readonly Breakage[] {
  const { pins, parts, springs } = whole.path.mechanism.design
  const all = (kind: Member['kind'], things: readonly unknown[]) => things.map((_, index): Member => ({ kind, index }))
  const members = [...all('pin', pins), ...all('part', parts).slice(1), ...all('spring', springs)]
  return members.map((member) => breakageOf(whole, member))
}

/** Takes one member out. */
export function breakageOf(whole: Whole, member: Member): Breakage {
  const { mechanism } = whole.path
  const joints = mechanism.joints.filter((joint) => !isGone(joint, member))
  const joined = joinedParts(joints)
  const moving = mechanism.design.parts.map((_, part) => part).filter((part) => part > 0)
  const isBroken = (part: number): boolean => member.kind === 'part' && member.index === part
  const loose = moving.filter((part) => !joined.has(part) && !isBroken(part))
  const springs = mechanism.design.springs.filter((spring, index) => acts(spring, index, { member, joined }))
  const rest: Broken = {
    ...whole,
    joints,
    mechanism: { ...mechanism, design: { ...mechanism.design, springs: springs.map(driving) } },
  }
  const nodes = evenNodes(whole.path, BROKEN_POSTURES)
  const closed = nodes[nodes.length - 1].posture
  const limp = limpParts(rest, closed).filter((part) => joined.has(part))
  const taken_ratio = mostTaken(nodes.map(({ posture }) => takenAt(rest, posture)))
  const opens = taken_ratio !== undefined && taken_ratio < 1
  return { member, outcome: outcomeOf({ loose, limp, opens }), loose, limp, ...(taken_ratio !== undefined && { taken_ratio }) }
}

/** Undefined where there is a posture at which no spring opens it. */
function mostTaken(shares: readonly (number | undefined)[]): number | undefined {
  const known = shares.filter((share) => share !== undefined)
  return known.length < shares.length ? undefined : Math.max(...known)
}

function outcomeOf({ loose, limp, opens }: { loose: readonly number[]; limp: readonly number[]; opens: boolean }): Outcome {
  if (loose.length > 0) return 'comes apart'
  if (opens) return limp.length > 0 ? 'opens in part' : 'opens'
  return limp.length > 0 ? 'goes limp' : 'stays closed'
}

/** A broken part holds none of its pins together any more. */
function isGone({ pin, a, b }: Joint, { kind, index }: Member): boolean {
  return (kind === 'pin' && pin === index) || (kind === 'part' && (a === index || b === index))
}

/** Parts that hang together with the mount. */
function joinedParts(joints: readonly Joint[]): ReadonlySet<number> {
  const joined = new Set([0])
  for (let found = 0; found < joined.size; ) {
    found = joined.size
    for (const { a, b } of joints) {
      if (joined.has(a)) joined.add(b)
      else if (joined.has(b)) joined.add(a)
    }
  }
  return joined
}

/** A spring acts while it is whole, both its ends are joined, and the pin that it sits on is there. */
function acts(
  spring: Spring,
  index: number,
  { member, joined }: { readonly member: Member; readonly joined: ReadonlySet<number> },
): boolean {
  if (member.kind === 'spring' && member.index === index) return false
  if (spring.kind !== 'torsion') return joined.has(spring.from.part) && joined.has(spring.to.part)
  const isOnPin = member.kind === 'pin' && member.index === spring.pin
  return !isOnPin && joined.has(spring.on) && joined.has(spring.against)
}

/** A spring gives what its own friction leaves. */
function driving(spring: Spring): Spring {
  const share = 1 - spring.ownFriction_ratio
  if (spring.kind === 'torsion') {
    return { ...spring, rate_Nmm_rad: share * spring.rate_Nmm_rad, preload_Nmm: share * spring.preload_Nmm }
  }
  return { ...spring, rate_N_mm: share * spring.rate_N_mm, initial_N: share * spring.initial_N }
}

/** A member as the document calls it. */
export function memberWords({ pins, parts, springs }: Design, { kind, index }: Member): string {
  const things = { pin: pins, part: parts, spring: springs }
  return `${kind} ${things[kind][index].id}`
}
