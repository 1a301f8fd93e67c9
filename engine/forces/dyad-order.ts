/**
 * In which order a mechanism of pins comes apart into dyads, the outermost first, until one part on the mount is left.
 *
 *           Q                 A dyad: two parts pinned to each other at Q, and each by one more pin to what is left when they
 *         ╱   ╲               are gone. Three pins, six force components, six equations: it can be worked out by itself,
 *     P ●       ● S           and what it gives at P and S is then a known load on the rest.
 *
 * The order is data that holds for every posture. A mechanism with slots or with a larger group has none.
 */
import type { Mechanism } from '../motion/mechanism.ts'
import { type Contact, contactsOf } from './contact.ts'

/** Contacts as the two parts of the dyad feel them. */
export interface Dyad {
  /** P, as the first part feels it. */
  readonly outerFirst: Contact
  /** Q, as the first part feels it; the second is its `beyond`. */
  readonly middle: Contact
  /** S, as the second part feels it. */
  readonly outerSecond: Contact
}

export interface DyadOrder {
  readonly dyads: readonly Dyad[]
  /** The pin of the last part on the mount. */
  readonly lead: Contact
}

/** @returns undefined where the parts do not come off two by two; the drive's own part stays to the last where it can */
export function dyadOrder(mechanism: Mechanism): DyadOrder | undefined {
  const { joints, rows_count, columns_count, design } = mechanism
  if (rows_count + 1 !== columns_count || joints.some(({ kind }) => kind !== 'pin')) return undefined
  const onMount = contactsOf(mechanism, 0).map(({ beyond }) => beyond)
  const { drive } = design
  const driven = drive.kind === 'turn' ? onMount.filter((part) => part === drive.part) : []
  for (const lead of [...driven, ...onMount]) {
    const order = dyadsLedBy(mechanism, lead)
    if (order) return order
  }
  return undefined
}

/**
 * The order that ends with a part of choice.
 *
 * @param mechanism all of whose joints are pins
 * @returns undefined where the parts do not come off two by two down to it
 */
export function dyadsLedBy(mechanism: Mechanism, lead: number): DyadOrder | undefined {
  const left = new Set(mechanism.design.parts.keys())
  const held = (part: number): Contact[] => contactsOf(mechanism, part).filter(({ beyond }) => left.has(beyond))
  const dyads: Dyad[] = []
  for (let dyad = nextDyad(); dyad; dyad = nextDyad()) {
    dyads.push(dyad)
    left.delete(dyad.outerFirst.part)
    left.delete(dyad.outerSecond.part)
  }
  const [last, ...more] = held(lead)
  return left.size === 2 && last && more.length === 0 ? { dyads, lead: last } : undefined

  function nextDyad(): Dyad | undefined {
    for (const first of left) {
      if (first === 0 || first === lead) continue
      const contacts = held(first)
      if (contacts.length !== 2) continue
      const found = dyadOf(contacts[0], contacts[1]) ?? dyadOf(contacts[1], contacts[0])
      if (found) return found
    }
    return undefined
  }

  function dyadOf(middle: Contact, outerFirst: Contact): Dyad | undefined {
    const second = middle.beyond
    if (second === 0 || second === lead || outerFirst.beyond === second) return undefined
    const contacts = held(second)
    const outerSecond = contacts.find(({ joint }) => joint !== middle.joint)
    return contacts.length === 2 && outerSecond ? { outerFirst, middle, outerSecond } : undefined
  }
}
