import { once } from '../numbers/once.ts'
import type { Strength } from './strength.ts'

/** A check under the name of its figure. */
export interface NamedStrength {
  /** E.g. `pin.dip.shear`. */
  readonly name: string
  /** What gives way, in words, e.g. `pin dip in bending`. */
  readonly words: string
  /** What it is looked at on; a part at a pin is named by the finding. */
  readonly of: { readonly kind: 'pin' | 'part' | 'stop' | 'spring' | 'screw'; readonly index: number }
  readonly strength: Strength
  /** It is known even where no equilibrium was found under some load case. */
  readonly standsAlone?: true
  /** Id of the load case under which it is worst, where no state of the parts tells. */
  readonly loadCase?: string
}

/** A check that is worked out when it is first looked at. */
export function checkOf(named: Omit<NamedStrength, 'strength'>, work: () => Strength): NamedStrength {
  const found = once(work)
  return {
    ...named,
    get strength() {
      return found()
    },
  }
}
