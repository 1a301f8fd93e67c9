/**
 * In which order parts can be taken off so that each leaves one equation in one unknown (docs/theory/two-force-links.md).
 *
 *        ●────────────● far        A link with two pins and nothing else on it gives a known line: one unknown, its force.
 *       near                       A part whose forces are all known but those of one pin and of one such link (or of the
 *     ┌──●───────┐                 port) has three equations for three unknowns. Once they are known it is taken off, and
 *     │  part    ●  pin            what it gives to its neighbours is a known load on them.
 *     └──────────┘
 *
 * Which links are bare depends on where the load and the port act, not on the posture and not on the sizes of the forces, so a
 * plan holds for a whole travel. Parts that hang together in more than one way (a part with two pins left, slots) have none.
 */
import type { Mechanism } from '../motion/mechanism.ts'
import { twoPinLinks } from '../motion/two-pin-link.ts'
import { type Contact, contactsOf } from './contact.ts'

/** A bare link as it holds a part: contacts as the link feels them. */
export interface BareLink {
  readonly near: Contact
  readonly far: Contact
}

/** A part with its pin, as the part feels it, and what else holds it. */
export interface HeldPart {
  readonly part: number
  readonly pin: Contact
  readonly by: BareLink | 'port'
}

/** Parts in the order in which they are taken off; the one that the port acts on gives its amplitude. */
export interface TwoForcePlan {
  readonly held: readonly HeldPart[]
}

/** 1 for each part that the load acts on, 1 for each that the port acts on; the mount counts for neither. */
export interface Acting {
  readonly load: Uint8Array
  readonly port: Uint8Array
}

/** @returns undefined where the parts cannot be taken off one by one */
export function planTwoForce(mechanism: Mechanism, acting: Acting): TwoForcePlan | undefined {
  const { joints, parts_count, rows_count, columns_count } = mechanism
  if (rows_count + 1 !== columns_count || joints.some(({ kind }) => kind !== 'pin')) return undefined
  const bare = bareLinks(mechanism, acting)
  // Every part that is no bare link is held by one, but for the last, which the port holds.
  if (parts_count - 1 !== 2 * bare.length + 1) return undefined
  const linked = new Set(bare.flat().map(({ joint }) => joint))
  const open = {
    bare: new Set(bare),
    pins: new Set(joints.flatMap((_, joint) => (linked.has(joint) ? [] : [joint]))),
    port: true,
  }
  const links = new Set(bare.map(([first]) => first.part))
  const left = new Set(Array.from({ length: parts_count - 1 }, (_, index) => index + 1).filter((part) => !links.has(part)))
  const held: HeldPart[] = []
  for (let next = freePart(); next; next = freePart()) {
    held.push(next)
    left.delete(next.part)
    open.pins.delete(next.pin.joint)
    if (next.by === 'port') open.port = false
    else for (const link of open.bare) if (link[0].part === next.by.near.part) open.bare.delete(link)
  }
  return left.size === 0 && open.bare.size === 0 && !open.port ? { held } : undefined

  function freePart(): HeldPart | undefined {
    for (const part of left) {
      const pins = contactsOf(mechanism, part).filter(({ joint }) => open.pins.has(joint))
      const holders = [
        ...[...open.bare].flatMap((link) => asHeld(link, part)),
        ...(open.port && acting.port[part] === 1 ? (['port'] as const) : []),
      ]
      if (pins.length === 1 && holders.length === 1) return { part, pin: pins[0], by: holders[0] }
    }
    return undefined
  }
}

function asHeld([first, second]: readonly [Contact, Contact], part: number): BareLink[] {
  return [
    ...(first.beyond === part ? [{ near: first, far: second }] : []),
    ...(second.beyond === part ? [{ near: second, far: first }] : []),
  ]
}

/** Both contacts of every bare link. Of two that share a pin the second counts as a part like any other. */
function bareLinks(mechanism: Mechanism, { load, port }: Acting): (readonly [Contact, Contact])[] {
  const taken = new Set<number>()
  return twoPinLinks(mechanism).flatMap(({ part }) => {
    if (load[part] === 1 || port[part] === 1) return []
    const [first, second] = contactsOf(mechanism, part)
    if (taken.has(first.joint) || taken.has(second.joint)) return []
    taken.add(first.joint).add(second.joint)
    return [[first, second] as const]
  })
}
