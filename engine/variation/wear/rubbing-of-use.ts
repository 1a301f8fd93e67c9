/** What rubs in a closing of ordinary use: the load cases by their shares of the closings, the rest without load. */
import type { LoadCase } from '../../design/design.ts'
import type { Ready } from '../../figures/ready-finger.ts'
import { actsInPlane } from '../../forces/case-way.ts'
import { type Rubbed, type Rubbing, rubbingUnder, wholeRubbing } from './rubbing.ts'

/** A load case with its part of the closings; without a load case those that carry nothing in the plane. */
export interface LoadShare {
  readonly loadCase: LoadCase | undefined
  readonly share_ratio: number
}

/**
 * Parts of the closings, their sum 1. A document that states none has all of them under the case that rubs most of all; load cases that
 * act out of the plane only press nothing that is looked at here.
 */
export function loadShares(ready: Ready): readonly LoadShare[] {
  const { loadCases, use } = ready.path.mechanism.design
  if (!use?.shares) return [{ loadCase: heaviest(ready), share_ratio: 1 }]
  const loaded = use.shares
    .map(({ loadCase, share_ratio }) => ({ loadCase: loadCases[loadCase], share_ratio }))
    .filter(({ loadCase, share_ratio }) => share_ratio > 0 && actsInPlane(loadCase))
  const rest = 1 - loaded.reduce((sum, { share_ratio }) => sum + share_ratio, 0)
  return rest > 0 ? [...loaded, { loadCase: undefined, share_ratio: rest }] : loaded
}

function heaviest(ready: Ready): LoadCase | undefined {
  const cases = ready.path.mechanism.design.loadCases.filter(actsInPlane)
  const rubs = (loadCase: LoadCase | undefined): number => {
    const { rubbing } = rubbingUnder(ready, loadCase)
    return rubbing ? wholeRubbing(rubbing) : Number.POSITIVE_INFINITY
  }
  const found = cases.map((loadCase) => ({ loadCase, rubs: rubs(loadCase) }))
  return found.reduce<(typeof found)[number] | undefined>((most, one) => (most && most.rubs >= one.rubs ? most : one), undefined)
    ?.loadCase
}

/** What rubs in the mean of all closings, or why it is not known. */
export function rubbingOfUse(ready: Ready, shares: readonly LoadShare[]): Rubbed {
  let sum: Rubbing | undefined
  for (const { loadCase, share_ratio } of shares) {
    const { rubbing, why } = rubbingUnder(ready, loadCase)
    if (!rubbing) return { why }
    sum = sum ? added(sum, rubbing, share_ratio) : added(nothing(rubbing), rubbing, share_ratio)
  }
  return sum ? { rubbing: sum } : { why: 'no closing is stated' }
}

const nothing = ({ bores, runs_mm, stops }: Rubbing): Rubbing => ({
  bores: bores.map((bore) => new Float64Array(bore.length)),
  runs_mm,
  stops: stops.map(() => 0),
})

function added(sum: Rubbing, more: Rubbing, share: number): Rubbing {
  return {
    bores: sum.bores.map((bore, index) => bore.map((work, sector) => work + share * more.bores[index][sector])),
    runs_mm: sum.runs_mm.map((run, index) => Math.max(run, more.runs_mm[index])),
    stops: sum.stops.map((work, index) => work + share * more.stops[index]),
  }
}
