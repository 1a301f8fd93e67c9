import { expect, it } from 'vitest'
import { changeDocument } from '../../engine/index.ts'
import { begun, type History, taken, undone } from './history.ts'
import { standingTrial, takingBack, trialWords } from './standing-trial.ts'

const { made, takenBack } = trialWords('Dry pins')
const text = (friction: number, length: string): string => JSON.stringify({ friction, length })
const fresh = begun(text(0.1, '44 mm'))
const tried = taken(fresh, { text: text(0.3, '44 mm'), said: made })
const goneOn = taken(tried, { text: text(0.3, '45 mm'), said: 'length' })

/** The history after its trial was taken back. */
function back(history: History): History {
  const step = standingTrial(history, 'Dry pins')
  if (step === undefined) throw new Error('no trial stands')
  const way = takingBack(history, step)
  return 'position' in way
    ? undone(history)
    : taken(history, { text: changeDocument(history.text, way.changes), said: takenBack })
}

it('stands from its step until it is undone or taken back', () => {
  expect(standingTrial(fresh, 'Dry pins')).toBeUndefined()
  expect(standingTrial(tried, 'Dry pins')).toBe(0)
  expect(standingTrial(tried, 'Gloved')).toBeUndefined()
  expect(standingTrial(undone(tried), 'Dry pins')).toBeUndefined()
  expect(standingTrial(goneOn, 'Dry pins')).toBe(0)
  expect(standingTrial(back(goneOn), 'Dry pins')).toBeUndefined()
})

it('that was done last is undone', () => {
  expect(back(tried)).toMatchObject({ text: fresh.text, position: 0 })
})

it('gives its own values back where others were changed since', () => {
  expect(back(goneOn).text).toBe(text(0.1, '45 mm'))
})

it('stands again when it is made again', () => {
  const again = taken(back(goneOn), { text: text(0.3, '45 mm'), said: made })
  expect(standingTrial(again, 'Dry pins')).toBe(again.position - 1)
})
