/** Asks by what they ask for, and the reading of those that something is calculated from. */

import type { Problem } from '../../design/problem.ts'
import { idNeeded } from '../../design/schema-leaves.ts'
import { kindWords, parseQuantity, type QuantityKind } from '../../numbers/quantity.ts'
import { quoted } from '../../numbers/quote.ts'
import type { Ask, Inputs } from './addition.ts'
import type { Ground } from './ground.ts'

/** The name of the new thing. */
export const askName = (typed: string): Ask => ({ id: 'name', label: 'name', kind: 'text', typed, needed: idNeeded })

/** A quantity of one kind. */
export function askQuantity(id: string, kind: QuantityKind, { label = id, typed }: { label?: string; typed: string }): Ask {
  return { id, label, kind, typed, needed: kindWords(kind) }
}

/** One of several; the first unless another is given. */
export function askChoice(id: string, choices: readonly string[], { label = id, typed = choices[0] } = {}): Ask {
  return { id, label, kind: 'choice', typed, choices, needed: `one of ${choices.slice(0, 6).join(', ')}` }
}

/** What was typed for each ask, first values where nothing was. */
export function answered(asks: readonly Ask[], inputs: Inputs): Inputs {
  const given = new Map(Object.entries(inputs))
  return Object.fromEntries(asks.map(({ id, typed }) => [id, given.get(id) ?? typed]))
}

/** Quantities that something is calculated from, in inside units; or the problems of those that cannot be read. */
export class Calculation {
  readonly problems: Problem[] = []
  private readonly ground: Ground

  constructor(ground: Ground) {
    this.ground = ground
  }

  /** NaN when it has been reported. */
  quantity(id: string, kind: QuantityKind, typed: string): number {
    const { value, fault } = parseQuantity(typed, kind, this.ground.desk.names)
    if (fault) this.report(id, fault.code, { found: `${quoted(typed)}: ${fault.found}`, needed: fault.needed })
    return value ?? Number.NaN
  }

  /** The one of that name; undefined when it has been reported. */
  named<T>(id: string, things: ReadonlyMap<string, T>, name: string): T | undefined {
    const thing = things.get(name)
    if (thing === undefined) this.report(id, 'unknown name', { found: quoted(name), needed: 'one of those that are offered' })
    return thing
  }

  report(place: string, code: string, { found, needed }: { readonly found: string; readonly needed: string }): void {
    this.problems.push({ code, place, found, needed })
  }
}
