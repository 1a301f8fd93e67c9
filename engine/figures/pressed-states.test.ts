import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readDesign } from '../design/read-design.ts'
import { assemble } from '../motion/assemble.ts'
import { mechanismOf } from '../motion/mechanism.ts'
import { makePathBench } from '../motion/path.ts'
import { travelPath } from '../motion/travel-path.ts'
import { forceThrough, jointsAt } from '../strength/pressed.ts'
import { pressedStates } from './pressed-states.ts'
import { type Survey, surveyTravel } from './survey.ts'

function surveyed(path: string): Survey {
  const { value } = readDesign(readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8'), path)
  const mechanism = value && mechanismOf(value)
  const posture = mechanism && assemble(mechanism).posture
  const travel = mechanism && posture && travelPath(makePathBench(mechanism), posture)
  if (!travel || !posture) throw new Error(`${path} does not move`)
  return surveyTravel(travel, posture)
}

it('is every load case just closing and just held at every posture of its way', () => {
  const survey = surveyed('designs/heron.json')
  const { states, missing } = pressedStates(survey, [])
  // SOURCE hand (three cases on the way at 61 postures each, two when closed only: 3 · 61 + 2 = 185, closing)
  expect(states.filter(({ doing }) => doing === 'closing')).toHaveLength(185)
  // The push on the back closes the finger: nothing holds it but the stop.
  expect(states.filter(({ doing }) => doing === 'holding')).toHaveLength(184)
  // Nobody has said what holds them when closed.
  expect(missing).toHaveLength(5)
})

it('presses pins in slots across them, so that a crosshead is balanced across its guide', () => {
  const survey = surveyed('cases/documents/friction-circle.json')
  const { mechanism } = survey.path
  const { parts, pins } = mechanism.design
  const part = parts.findIndex(({ id }) => id === 'crosshead')
  const { states } = pressedStates(survey, [])
  expect(states.length).toBeGreaterThan(0)
  for (const state of states) {
    const forces = pins.map((_, pin) => forceThrough(jointsAt(mechanism, { pin, part }), state))
    const guides = forces.filter((_, pin) => ['near', 'far'].includes(pins[pin].id))
    const size = Math.max(...forces.map(({ x, y }) => Math.hypot(x, y)))
    // SOURCE property (the guide lies along x, and so does the pull of the drive: y sums to nothing, and the guides give y only)
    expect(Math.abs(forces.reduce((sum, { y }) => sum + y, 0)) / size).toBeLessThan(1e-9)
    expect(Math.max(...guides.map(({ x }) => Math.abs(x))) / size).toBeLessThan(1e-9)
    expect(Math.max(...guides.map(({ y }) => Math.abs(y)))).toBeGreaterThan(0)
  }
})
