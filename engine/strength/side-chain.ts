/**
 * Which hinges carry a push on the side of a finger to the mount.
 *
 *     tip ●── distal ──(dip)── middle ──(pip)── proximal ──(mcp)── mount
 *                  ╲___ link ___╱                                            a link carries none
 *
 * A closed chain could share the push among its ways; how, only its stiffness and its play would say. Coupling links are thin plates with
 * play between cheeks, so they are left out: the phalanges and their hinges carry all of it, which for them is the safe side. Where there is
 * no other way the links carry it after all.
 */
import type { Design } from '../design/design.ts'

/** One hinge on the way, from the outer part to the next one inwards. */
export interface SideHinge {
  readonly pin: number
  readonly outer: number
  readonly inner: number
}

/** A way through a link counts as so many others: it is taken only where there is none. */
const LINK_COST = 1000

/** The hinges from a part to the mount, outermost first; empty for the mount itself and for what no pins join to it. */
export function sideChain(design: Design, from: number): readonly SideHinge[] {
  const hinges = hingesOf(design)
  const cost = design.parts.map((_, part) => (part === 0 ? 0 : Number.POSITIVE_INFINITY))
  const next: (SideHinge | undefined)[] = design.parts.map(() => undefined)
  // Each round settles at least one part more, so as many rounds as parts are enough.
  for (let round = 0; round < design.parts.length; round++) {
    for (const hinge of hinges) {
      const { role } = design.parts[hinge.outer]
      const over = cost[hinge.inner] + (role === 'link' || role === 'roller' ? LINK_COST : 1)
      if (over >= cost[hinge.outer]) continue
      cost[hinge.outer] = over
      next[hinge.outer] = hinge
    }
  }
  const chain: SideHinge[] = []
  for (let hinge = next[from]; hinge; hinge = next[hinge.inner]) chain.push(hinge)
  return chain
}

/** Every pair of parts that a pin joins, both ways. */
function hingesOf({ pins }: Design): SideHinge[] {
  return pins.flatMap(({ joins }, pin) =>
    joins.flatMap(({ part: outer }) =>
      joins.flatMap(({ part: inner }): SideHinge[] => (inner === outer ? [] : [{ pin, outer, inner }])),
    ),
  )
}
