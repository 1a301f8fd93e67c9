import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Change } from '../design/edit/change.ts'
import { changeDocument } from '../design/edit/change-document.ts'
import { readDesign } from '../design/read-design.ts'
import { evaluate } from '../evaluate.ts'
import type { Evaluation } from './evaluation.ts'
import { isMoved, whatMoved } from './what-moved.ts'

/** The example without its risks, which name requirements. */
const heron = changeDocument(readFileSync(new URL('../../designs/heron.json', import.meta.url), 'utf8'), [
  { kind: 'remove', place: ['risks'] },
])
const topX = ['parts', 'proximal', 'holes', 'top', 'x']

function evaluated(...changes: readonly Change[]): Evaluation {
  const { value, problems } = readDesign(changeDocument(heron, changes), 'heron')
  if (!value) throw new Error(JSON.stringify(problems))
  return evaluate(value)
}

const before = evaluated()
const valueIn = ({ figures }: Evaluation, id: string) => figures.find((figure) => figure.id === id)?.value

describe('heron with a pin moved by half a millimetre', () => {
  const after = evaluated({ kind: 'set', place: topX, value: '45.63 mm' })
  const moved = whatMoved(before, after)

  it('moves the findings that hang on it, by what its figures differ', () => {
    expect(moved.findings.map(({ requirement }) => requirement).sort()).toEqual(
      [
        'bearsItsLoads',
        'carryKeeper',
        'carryWindow',
        'effort',
        'pipFlexion',
        'reserve',
        'shortInPlay',
        'shortOfDeadCentre',
      ].sort(),
    )
    for (const { figure } of [...moved.findings, ...moved.figures.map((figure) => ({ figure }))]) {
      // SOURCE other-method (the figures of the two evaluations, one less the other)
      const [was, is] = [valueIn(before, figure.figure), valueIn(after, figure.figure)]
      expect([figure.before, figure.after]).toEqual([was, is])
      expect(figure.change).toBeCloseTo(Number(is) - Number(was), 12)
    }
  })

  it('does not name findings that stand where they stood', () => {
    const named = new Set(moved.findings.map(({ requirement }) => requirement))
    for (const { requirement, figure } of before.findings) {
      if (named.has(requirement.id)) continue
      const [was, is] = [figure?.value, valueIn(after, requirement.figure)]
      expect(Math.abs(Number(is) - Number(was)), requirement.id).toBeLessThan(1e-3 * Math.max(1, Math.abs(Number(was))))
    }
  })

  it('tells first of what moved furthest from its bound', () => {
    const shares = moved.findings.map(({ after: finding, figure }) => {
      const bound = finding!.requirement.bound
      return Math.abs(figure.change ?? 0) / Math.abs(Number(bound.value))
    })
    expect(shares).toEqual([...shares].sort((one, other) => other - one))
  })

  it('tells of each figure once', () => {
    const told = [...moved.findings.map(({ figure }) => figure.figure), ...moved.figures.map(({ figure }) => figure)]
    expect(new Set(told).size).toBe(told.length)
    expect(told).toContain('closed.toggle.distal.jamAngle')
  })

  it('seen backwards moves as much the other way', () => {
    const back = whatMoved(after, before)
    const changes = (all: typeof moved) => new Map(all.figures.map(({ figure, change }) => [figure, change]))
    for (const [figure, change] of changes(moved)) expect(changes(back).get(figure)).toBeCloseTo(-Number(change), 12)
  })
})

describe('nothing moves', () => {
  const none = { findings: [], figures: [], came: [], gone: [] }

  it('between an evaluation and itself', () => {
    expect(whatMoved(before, before)).toEqual(none)
  })

  it('when a length is spelt in another unit, or a corner of an outline is moved', () => {
    expect(whatMoved(before, evaluated({ kind: 'set', place: topX, value: '4.513 cm' }))).toEqual(none)
    expect(whatMoved(before, evaluated({ kind: 'set', place: ['parts', 'mount', 'outline', 0, 0], value: '-14.5 mm' }))).toEqual(
      none,
    )
  })

  it.each<[string, Parameters<typeof isMoved>[0], boolean]>([
    // SOURCE hand (0.01 degrees are 0.0001745 rad; a thousandth of 2000 N·mm is 2 N·mm)
    ['a thousandth of a degree', { figure: 'x', title: 'x', unit: 'rad', before: 0.1, after: 0.10002, change: 0.00002 }, false],
    ['a fiftieth of a degree', { figure: 'x', title: 'x', unit: 'rad', before: 0.1, after: 0.10035, change: 0.00035 }, true],
    [
      'a newton millimetre of two newton metres',
      { figure: 'x', title: 'x', unit: 'N·mm', before: 2000, after: 2001, change: 1 },
      false,
    ],
    ['three of them', { figure: 'x', title: 'x', unit: 'N·mm', before: 2000, after: 2003, change: 3 }, true],
    ['a figure that came to be', { figure: 'x', title: 'x', unit: 'N', before: undefined, after: 3 }, true],
    ['a yes that stays', { figure: 'x', title: 'x', unit: 'yes or no', before: true, after: true }, false],
  ])('%s: as it should', (_, move, expected) => {
    expect(isMoved(move)).toBe(expected)
  })
})

describe('verdicts', () => {
  it('that change come first, however little the figure moved', () => {
    const bound: Change = { kind: 'set', place: ['requirements', 'effort', 'atMost'], value: '2.27 N*m' }
    const { findings } = whatMoved(before, evaluated(bound, { kind: 'set', place: topX, value: '45.23 mm' }))
    expect(findings[0]).toMatchObject({ requirement: 'effort', verdictChanged: true, after: { verdict: 'short' } })
    expect(findings.slice(1).every(({ verdictChanged }) => !verdictChanged)).toBe(true)
  })

  it('of a requirement that came or went are told', () => {
    const without = evaluated({ kind: 'remove', place: ['requirements', 'reserve'] })
    expect(whatMoved(before, without).findings).toMatchObject([
      { requirement: 'reserve', verdictChanged: true, before: { verdict: 'met' } },
    ])
    expect(whatMoved(before, without).findings[0].after).toBeUndefined()
    expect(whatMoved(without, before).findings).toMatchObject([{ requirement: 'reserve', after: { verdict: 'met' } }])
  })

  it('of a requirement under another name are not the same', () => {
    const renamed = evaluated({ kind: 'rename', place: ['requirements', 'reserve'], to: 'strongEnough' })
    expect(
      whatMoved(before, renamed)
        .findings.map(({ requirement }) => requirement)
        .sort(),
    ).toEqual(['reserve', 'strongEnough'])
  })

  it('of a bound that was moved without a change of verdict are told too', () => {
    const { findings } = whatMoved(
      before,
      evaluated({ kind: 'set', place: ['requirements', 'effort', 'atMost'], value: '2.9 N*m' }),
    )
    expect(findings).toMatchObject([{ requirement: 'effort', verdictChanged: false }])
  })
})

it('a problem that an edit brings is told, and told to be gone when it is undone', () => {
  const broken = evaluated({ kind: 'set', place: ['dimensions', 'topLinkLength', 'value'], value: '44 mm' })
  expect(broken.problems.length).toBeGreaterThan(0)
  const there = whatMoved(before, broken)
  expect(there.came).toEqual(broken.problems)
  expect(there.findings[0]).toMatchObject({ verdictChanged: true, after: { verdict: 'undecided' } })
  expect(whatMoved(broken, before)).toMatchObject({ came: [], gone: broken.problems })
})
