import { expect, it } from 'vitest'
import type { Member } from '../design/design.ts'
import { shelfFinger } from '../sketches/shelf-finger.ts'
import type { RankedStrength } from './evaluation.ts'
import { givesWayOf } from './gives-way.ts'

const check = (words: string, margin: number, of: { pin?: string; part?: string }): RankedStrength => ({
  figure: `strength.${words}`,
  words,
  margin,
  says: 'breaks',
  factor: 2,
  ...of,
})
const link: Member = { kind: 'part', index: 5 }
const dip: Member = { kind: 'pin', index: 2 }
const judge = (order: readonly Member[], ranked: readonly RankedStrength[]) =>
  givesWayOf({ ...shelfFinger(), givesWay: order }, { ranked, open: [], refused: [] })

const ranked = [
  check('link2 pulled', 0.2, { part: 'link2' }),
  check('lug of distal at dip', 0.4, { pin: 'dip', part: 'distal' }),
  check('pin dip in shear', 0.9, { pin: 'dip' }),
]

it('the order is judged by the least margin of each, a lug counting for its part', () => {
  // SOURCE hand (0.2 before 0.9)
  expect(judge([link, dip], ranked)).toMatchObject({ verdict: 'met', steps: [{ margin: 0.2 }, { margin: 0.9 }] })
  expect(judge([dip, link], ranked)).toMatchObject({ verdict: 'short', why: 'part link2 gives way before pin dip' })
})

it('what is not in the order may not come first', () => {
  expect(judge([dip], ranked)).toMatchObject({ verdict: 'short', why: 'link2 pulled comes before pin dip' })
})

it('without a margin nothing is said', () => {
  expect(judge([link, dip], ranked.slice(0, 2))).toMatchObject({ verdict: 'undecided' })
  expect(givesWayOf(shelfFinger(), { ranked, open: [], refused: [] })).toBeUndefined()
})
