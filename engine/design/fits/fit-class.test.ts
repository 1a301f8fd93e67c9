import { expect, it } from 'vitest'
import { fitClassDeviations, isFitClass } from './fit-class.ts'

const inch_mm = 25.4

/** Deviations in thousandths of an inch: of the hole and of the shaft, upper before lower. */
function thou(name: string, size_in: number): readonly number[] {
  const rounded = (mm: number) => Math.round((mm / inch_mm) * 1e6) / 1e3 + 0
  return (['hole', 'shaft'] as const).flatMap((surface) => {
    const { deviations, fault } = fitClassDeviations(name, { size_mm: size_in * inch_mm, surface })
    if (!deviations) throw new Error(JSON.stringify(fault))
    return [rounded(deviations.upper_mm), rounded(deviations.lower_mm)]
  })
}

const clearances = (name: string, size_in: number) => {
  const [hole, holeLeast, shaft, shaftLeast] = thou(name, size_in)
  return [holeLeast - shaft, hole - shaftLeast].map((value) => Math.round(value * 1e3) / 1e3 + 0)
}

// SOURCE standard ANSI B4.1-1967, from memory: thousandths of an inch, sizes up to 0.12 and up to 0.24 in
it.each<[string, number[], number[]]>([
  ['RC1', [0.2, 0, -0.1, -0.25], [0.2, 0, -0.15, -0.3]],
  ['RC2', [0.25, 0, -0.1, -0.3], [0.3, 0, -0.15, -0.35]],
  ['RC3', [0.4, 0, -0.3, -0.55], [0.5, 0, -0.4, -0.7]],
  ['RC4', [0.6, 0, -0.3, -0.7], [0.7, 0, -0.4, -0.9]],
  ['LC2', [0.4, 0, 0, -0.25], [0.5, 0, 0, -0.3]],
  ['LN2', [0.4, 0, 0.65, 0.4], [0.5, 0, 0.8, 0.5]],
])('%s has the limits of its table', (name, small, larger) => {
  expect(thou(name, 0.1)).toEqual(small)
  expect(thou(name, 0.2)).toEqual(larger)
})

// SOURCE book Machinery's Handbook, 31st edition (27th for FN): the clearances and interferences that the tables print beside the limits, read
it.each<[string, number, number[]]>([
  ['RC1', 0.5, [0.25, 0.75]],
  ['RC2', 0.5, [0.25, 0.95]],
  ['RC3', 0.3, [0.5, 1.5]],
  ['RC4', 0.3, [0.5, 2]],
  ['RC5', 0.3, [1, 2.5]],
  ['RC6', 0.2, [0.8, 2.7]],
  ['RC7', 0.1, [1, 2.6]],
  ['RC8', 0.5, [3.5, 7.9]],
  ['RC9', 0.3, [5, 10.7]],
  ['LT1', 0.1, [-0.12, 0.52]],
  ['LT2', 0.2, [-0.25, 0.95]],
  ['LT3', 0.3, [-0.5, 0.5]],
  ['LT4', 0.5, [-0.8, 0.9]],
  ['LT5', 0.1, [-0.5, 0.15]],
  ['LT6', 0.2, [-0.8, 0.2]],
  ['LN1', 0.3, [-0.65, -0.0]],
  ['LN3', 0.5, [-1.4, -0.3]],
  ['FN1', 0.1, [-0.5, -0.05]],
  ['FN2', 0.6, [-1.6, -0.5]],
  ['FN4', 0.3, [-1.6, -0.6]],
  ['FN5', 0.6, [-2.5, -0.8]],
])('%s at %f in leaves what is printed beside it', (name, size_in, [least, most]) => {
  expect(clearances(name, size_in)).toEqual([least + 0, most + 0])
})

it('says what there is where a class is not', () => {
  const at = (name: string, size_in: number) => fitClassDeviations(name, { size_mm: size_in * inch_mm, surface: 'hole' }).fault
  expect(at('RC4', 0.71)).toBeUndefined()
  expect(at('RC4', 0.711)).toMatchObject({ code: 'too large', needed: 'a size up to 0.71 in for a class' })
  // SOURCE book Machinery's Handbook, 31st edition, table 10, read: LT 3 begins above 0.24 in
  expect(at('LT3', 0.2)?.needed).toMatch(/LT2, LT5/)
  expect(at('RC12', 0.2)?.code).toBe('unknown name')
  expect(['RC4', 'FN12', 'H7', 'RC', 'rc4'].map(isFitClass)).toEqual([true, true, false, false, false])
})
