import fc from 'fast-check'
import { expect, it } from 'vitest'
import { spliceBetween } from '../engine/index.ts'
import { newStore } from './test-support/store-bench.ts'

it('after any saves the draft has the text that its history leads to', async () => {
  const store = await newStore()
  let designs = 0
  // SOURCE property (an editor's own list of texts is the second road: no splice is applied there)
  await fc.assert(
    fc.asyncProperty(
      fc.string({ unit: 'binary', maxLength: 30 }),
      fc.array(
        fc.record({
          texts: fc.array(fc.string({ unit: 'binary', maxLength: 30 }), { maxLength: 4 }),
          back: fc.nat(6),
          stay: fc.nat(6),
        }),
        { maxLength: 6 },
      ),
      async (base, saves) => {
        const name = `design ${designs++}`
        let texts = [base]
        let version = 0
        for (const save of saves) {
          const keep = Math.max(0, texts.length - 1 - save.back)
          texts = [...texts.slice(0, keep + 1), ...save.texts]
          const steps = save.texts.map((text, index) => ({
            splice: spliceBetween(texts[keep + index], text),
            said: 'a change',
          }))
          const position = Math.max(0, texts.length - 1 - save.stay)
          const saved = store.keepDraft(name, { version, keep, steps, position, base })
          expect(saved).toEqual({ kept: { version: version + 1 } })
          version++
          expect(store.draft(name)).toMatchObject({ version, base, position, text: texts[position] })
        }
      },
    ),
    { seed: 30_411, numRuns: 150 },
  )
})
