import { expect, it } from 'vitest'
import { measuredPieces, pairingSize, pairRows, pairSentence } from './pair-rows.ts'
import { plan } from './test-support/small-plan.ts'

it('a set is taken apart into its parts and pins; what belongs to no piece is left out', () => {
  const [pin] = plan
  const other = (kind: 'part' | 'coating') => ({ ...pin, piece: { kind, id: 'film', title: kind } })
  const size = { least: 3, most: 3 }
  const readings = [pin, { ...pin, number: 2 }, other('part'), other('coating')].map((characteristic) => ({
    characteristic,
    size,
  }))
  const pieces = measuredPieces([
    { serial: 'A', readings },
    { serial: 'B', readings: readings.slice(0, 1) },
  ])
  // SOURCE hand
  expect(pieces.map(({ serial, piece, readings: own }) => `${serial} ${piece.kind} ${own.length}`)).toEqual([
    ...['A pin 2', 'A part 1', 'B pin 1'],
  ])
  // SOURCE hand: 40 sets of two kinds, 40 · (40 + 40) fingers a round
  const many = Array.from({ length: 40 }, () => pieces.slice(0, 2)).flat()
  expect(pairingSize(many)).toContain('40 sets of 2 kinds of pieces: up to 3200 fingers')
  expect(pairingSize(pieces)).toBeUndefined()
  const lot = { sets: [{ pieces: [pieces[0], pieces[1]], works: true }], working_count: 1, firstCome_count: 0 }
  expect(pairRows(lot)).toEqual([{ number: 1, answer: 'met', pieces: 'A: Pin pin, part' }])
  expect(pairSentence(lot)).toContain(
    '1 of 1 sets meet every requirement; first come, first served it would be 0. Pairing gains 1.',
  )
})
