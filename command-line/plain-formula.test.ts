import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readDesign, workingsOf } from '../engine/index.ts'
import { plainFormula } from './plain-formula.ts'

describe('a formula in plain text', () => {
  it.each([
    // SOURCE hand: what one would write on a line of paper.
    ['\\lambda_{rest} = \\min_{\\kappa_j = \\pm\\rho_j} \\lambda', 'λ_rest = min_(κ_j = ±ρ_j) λ'],
    ['\\sigma = \\frac{32\\,M}{\\pi d^3}', 'σ = (32 M)/(π d³)'],
    ['x_b = x_a - \\tfrac{c}{2}\\, \\hat R', 'x_b = x_a − (c/2) R̂'],
    ['\\delta = \\arcsin\\frac{\\rho_A + \\rho_B}{L}', 'δ = arcsin((ρ_A + ρ_B)/L)'],
    ['K_f = 1 + \\frac{K_t - 1}{1 + \\sqrt{a / r}}', 'K_f = 1 + (K_t − 1)/(1 + √(a / r))'],
    ['\\text{met: } p_{\\text{least}} \\ge p \\qquad \\left|m\\right| \\le 1', 'met: p_least ≥ p    |m| ≤ 1'],
    ['\\sum_{i=0}^{k} \\binom{n}{i} R^{n-i}', 'Σ_(i=0)^k (n over i) R^(n−i)'],
    ['a \\unknown b', 'a \\unknown b'],
  ])('%s', (tex, plain) => {
    expect(plainFormula(tex)).toBe(plain)
  })

  it('leaves nothing of how the example’s formulas are written', () => {
    const { value } = readDesign(readFileSync('designs/heron.json', 'utf8'))
    if (!value) throw new Error('the example is refused')
    const formulas = [...workingsOf(value).values()].flatMap((working) => working.formulas)
    expect(formulas.length).toBeGreaterThan(100)
    expect(formulas.map(plainFormula).filter((plain) => /[\\{}]/.test(plain))).toEqual([])
  })
})
