import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { type Design, type RiskRow, readDesign } from '../../engine/index.ts'
import { riskRows } from './risk-rows.ts'

const heron = readDesign(readFileSync(join(import.meta.dirname, '../../designs/heron.json'), 'utf8')).value as Design
const row = (more: Partial<RiskRow>, notMet: Partial<RiskRow['notMet'][number]> = {}): RiskRow => ({
  risk: heron.risks[0],
  before: 'short',
  notMet: [{ requirement: heron.requirements[1], asDrawn: 'met', ...notMet }],
  verdict: 'undecided',
  ...more,
})
const fromOf = (one: RiskRow) => riskRows({ risks: [one] }, heron)[0].from

it('the probability of what is left says of each thing where it comes from', () => {
  const life = { requirement: 'letsGo', figure: 'return.letsGo', verdict: 'undecided', untilMost: 28_700 } as const
  // SOURCE hand: what is put in above and here
  expect(fromOf(row({}, { life }))).toEqual([
    'requirement letsGo: met as drawn; sets are not counted yet (Spread)',
    'requirement letsGo, as it wears: may fall short after 28\u00a0700 closings at the most wear; looking it over has to come before, or a shorter life be stated (use)',
  ])
  const overload = { share_ratio: 0.02, strengthOverStress: 1.95, words: 'pin dip in bending' }
  expect(fromOf(row({}, { overload })).at(-1)).toBe(
    'pin dip in bending: strength is 1.95 times the stress; as both scatter, 2 % are overloaded',
  )
  const share = { value: 0.125, least: 0.0032, most: 0.53, by: 'counts', samples: 8 } as const
  expect(fromOf(row({ seen: { serials: ['A-001'], hurt_count: 1, share } })).at(-1)).toBe(
    'field log: 1 of 8 sets came back with it, 1 with somebody hurt (A-001); at least 0.32 % at 95 % confidence, and what nobody reports is not in it',
  )
})
