// The origin of every expected number stands beside it in the case files.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type DoorAnswer, openServer, type ServedDoor, throughCommand, throughEngine } from './doors.ts'
import { type ExpectedFigure, workedCases } from './worked-case.ts'

let server: ServedDoor
beforeAll(async () => {
  server = await openServer()
})
afterAll(() => server.end())

it('there are worked cases', () => {
  expect(workedCases().length).toBeGreaterThan(0)
})

describe.each(workedCases())('$title', ({ design, status, figures, problems }) => {
  let said: DoorAnswer
  beforeAll(() => {
    said = throughEngine(design)
  })

  it.each(Object.entries(figures))('%s through the engine', (id, expected) => {
    expectFigure(said, id, expected)
  })

  it('the command says the same as the engine and ends with the expected status', () => {
    const answer = throughCommand(design)
    expect(answer.status).toBe(status)
    expectSame(answer, said)
  })

  it('the server says the same as the engine', async () => {
    expectSame(await server.answer(design), said)
  })

  it('the problems are those that are expected', () => {
    expect([...said.problems].sort()).toEqual([...(problems ?? [])].sort())
  })
})

function expectFigure(answer: DoorAnswer, id: string, { value, unit, tolerance }: ExpectedFigure): void {
  const figure = answer.figures[id]
  expect(figure, `figure ${id}`).toBeDefined()
  expect(figure.unit).toBe(unit)
  if (typeof value === 'number')
    expect(Math.abs(Number(figure.value) - value), `${id} is ${figure.value}`).toBeLessThanOrEqual(tolerance ?? 0)
  else expect(figure.value).toBe(value)
}

/** Equal to twelve digits: both run on one machine, but through two bundlings of one source. */
function expectSame(answer: DoorAnswer, other: DoorAnswer): void {
  expect(rounded(answer)).toEqual(rounded(other))
}

function rounded({ figures, verdicts, problems }: DoorAnswer): object {
  const entries = Object.entries(figures).map(([id, { value, unit }]) => [
    id,
    typeof value === 'number' ? value.toPrecision(12) : value,
    unit,
  ])
  return { figures: entries.sort(), verdicts, problems }
}
