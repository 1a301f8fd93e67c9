import type { Design } from '../../design/design.ts'
import { seatsOf, toggleArms } from '../../design/toggle-arms.ts'
import type { Addition, Ask } from './addition.ts'
import { answered, askChoice, askName } from './asks.ts'
import { freeName, type Ground, putInto } from './ground.ts'

/** Three pins whose dead-centre margin is watched; none while no three pins make a toggle. */
export function newToggle(ground: Ground): Addition | undefined {
  const first = firstToggle(ground.design)
  if (!first) return undefined
  const pins = ground.design.pins.map(({ id }) => id)
  const asks: readonly Ask[] = [
    askName(freeName(ground, ['toggles'], 'newToggle')),
    ...(['A', 'B', 'C'] as const).map((pin, index) => askChoice(pin, pins, { label: `pin ${pin}`, typed: pins[first[index]] })),
  ]
  const propose: Addition['propose'] = (inputs) => {
    const { name, A, B, C } = answered(asks, inputs)
    return { value: [putInto(ground, ['toggles'], [name, { pins: [A, B, C] }])] }
  }
  return { kind: 'toggle', title: 'A toggle of three pins', asks, propose }
}

/** The first three pins that can be a toggle and are none yet; of a design whose toggles are all watched, the first of all. */
function firstToggle({ pins, parts, toggles }: Design): readonly number[] | undefined {
  const seats = pins.map((pin) => seatsOf(pin, parts))
  const all = [...pins.keys()]
  const found = all.flatMap((a) =>
    all.flatMap((b) =>
      all.filter((c) => c > a && b !== a && b !== c && toggleArms([seats[a], seats[b], seats[c]])).map((c) => [a, b, c]),
    ),
  )
  return (
    found.find(
      ([a, b, c]) => !toggles.some((toggle) => toggle.b === b && [toggle.a, toggle.c].every((end) => end === a || end === c)),
    ) ?? found[0]
  )
}
