import { describe, expect, it } from 'vitest'
import { readDesign } from '../read-design.ts'
import { type Changes, documentText } from '../test-support/full-document.ts'

const screw = {
  thread: 'M3',
  class: '8.8',
  in: 'mount',
  engagement: '6 mm',
  torque: '0.6 N*m',
  coefficient: 0.2,
  holdsMount: { x: '1 mm', y: '-7 mm', pulls: '-90 deg' },
}
const read = (changes: object, other: object = {}) =>
  readDesign(documentText({ screws: { front: { ...screw, ...changes }, ...other } } as Changes))
const problems = (changes: object, other?: object) =>
  (read(changes, other).problems ?? []).map(({ place, code }) => `${place}: ${code}`)

it('reads a screw in inside units', () => {
  // SOURCE hand (0.6 N·m = 600 N·mm; the row of the thread as the table has it)
  expect(read({}).value?.screws).toMatchObject([
    {
      id: 'front',
      thread: { diameter_mm: 3, pitch_mm: 0.5 },
      part: 0,
      engagement_mm: 6,
      torque_Nmm: 600,
      scatter_ratio: 0.25,
      screws_count: 1,
    },
  ])
})

it('reads the hole that is tapped for it, as far as it is stated', () => {
  // SOURCE hand (as typed)
  const stated = { tapClass: '6H', tapDepth: '6 mm', drill: '2.5 mm', drillDepth: '8 mm' }
  expect(read(stated).value?.screws?.[0].tapped).toEqual({ class: '6H', threadDepth_mm: 6, drill_mm: 2.5, drillDepth_mm: 8 })
  expect(read({}).value?.screws?.[0].tapped).toEqual({})
})

it('reads where each of several stands across the finger, its mass and its price', () => {
  const wide = {
    'parts.mount.across': [
      ['-5 mm', '-1 mm'],
      ['1 mm', '5 mm'],
    ],
  }
  const two = { screws: { front: { ...screw, screws: 2, across: ['-3 mm', '2.5 mm'], mass: '0.6 g', each: '0.2' } } }
  // SOURCE hand (as typed; a thread of 3 mm reaches from 1 to 4 mm, which is just within a plate from 1 to 5 mm)
  expect(readDesign(documentText({ ...wide, ...two } as Changes)).value?.screws).toMatchObject([
    { screws_count: 2, across_mm: [-3, 2.5], mass_kg: 0.0006, each: 0.2 },
  ])
  const refused = (across: readonly string[], more: object = wide, count = 2) => {
    const front = { ...screw, screws: count, across }
    return (readDesign(documentText({ ...more, screws: { front } } as Changes)).problems ?? []).map(
      ({ place, code }) => `${place}: ${code}`,
    )
  }
  expect(refused(['-3 mm', '2.4 mm'])).toEqual(['screws.front.across.1: outside'])
  expect(refused(['-3 mm', '0 mm'])).toEqual(['screws.front.across.1: outside'])
  expect(refused(['-3 mm'])).toEqual(['screws.front.across: too few'])
  expect(refused(['-3 mm', '3 mm'], wide, 1)).toEqual(['screws.front.across: too many'])
  expect(refused(['-3 mm', '-3.4 mm'])).toEqual(['screws.front.across.1: too close'])
  expect(refused(['-3 mm', '3 mm'], {})).toEqual(['parts.mount.across: missing'])
})

describe('a screw is refused', () => {
  it.each<readonly [string, object, readonly string[]]>([
    ['with a thread that is not in the table', { thread: 'M3.5' }, ['screws.front.thread: wrong value']],
    ['in a part that there is not', { in: 'plate' }, ['screws.front.in: unknown name']],
    ['without engagement', { engagement: undefined }, ['screws.front.engagement: missing']],
    ['with an engagement below 0', { engagement: '-1 mm' }, ['screws.front.engagement: too small']],
    ['without torque', { torque: '0 N*m' }, ['screws.front.torque: too small']],
    ['when nothing tells its preload', { coefficient: undefined }, ['screws.front: missing']],
    ['when two things tell its preload', { friction: { thread: 0.15, head: 0.15 } }, ['screws.front: too many']],
    ['when it scatters by all of its preload', { scatter: '100 %' }, ['screws.front.scatter: too large']],
    ['with less thread than is in grip', { tapDepth: '5.9 mm' }, ['screws.front.tapDepth: too small']],
    ['with a hole less deep than its thread', { tapDepth: '6 mm', drillDepth: '5.9 mm' }, ['screws.front.drillDepth: too small']],
    ['with a drill that leaves nothing to tap', { drill: '3 mm' }, ['screws.front.drill: too large']],
    ['in a class of thread that there is not', { tapClass: '7Z' }, ['screws.front.tapClass: wrong value']],
    ['as half of one', { screws: 1.5 }, ['screws.front.screws: wrong value']],
  ])('%s', (_, changes, expected) => {
    expect(problems(changes)).toEqual(expected)
  })

  it('when it pulls the mount another way than its neighbour', () => {
    const rear = (pulls: string) => ({ rear: { ...screw, holdsMount: { x: '9 mm', y: '-7 mm', pulls } } })
    expect(problems({}, rear('270 deg'))).toEqual([])
    expect(problems({}, rear('-80 deg'))).toEqual(['screws.rear.holdsMount.pulls: wrong value'])
    expect(problems({}, rear('90 deg'))).toEqual(['screws.rear.holdsMount.pulls: wrong value'])
  })
})
