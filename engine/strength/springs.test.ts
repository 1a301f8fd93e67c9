import { describe, expect, it } from 'vitest'
import { activeTurns, bodyTurnsUnder, helicalRate, springIndex, torsionRate } from '../design/springs/coil.ts'
import { bergstraesser, coilForce, coilShear, directShear, steadyLength, wahl } from './compression-spring.ts'
import { arbourClearance, innerBending, torsionMoment } from './torsion-spring.ts'

const IN = 25.4
const LBF = 4.4482216
const PSI = LBF / IN ** 2

describe('a compression spring', () => {
  it('is that of a textbook in music wire', () => {
    // SOURCE book (Shigley, ex. 10-1, from memory: C 10.8, K_B 1.124, F 6.46 lbf, k 4.13 lbf/in, buckling limit 2.10 in; worked out
    // again: 10.82, 1.1241, 6.446, 4.116; the limit of 2.63 D/α is that of 30 and 11.5 million psi)
    const coil = { wire_mm: 0.037 * IN, mean_mm: (7 / 16 - 0.037) * IN }
    expect(springIndex(coil)).toBeCloseTo(10.82, 2)
    expect(bergstraesser(springIndex(coil))).toBeCloseTo(1.1241, 4)
    const rate = helicalRate({ ...coil, shearModulus_MPa: 11.85e6 * PSI, activeTurns: 10.5 })
    expect((rate * IN) / LBF).toBeCloseTo(4.116, 2)
    const force = coilForce(coil, 0.45 * 324.2e3 * PSI, bergstraesser(springIndex(coil)))
    expect(force / LBF).toBeCloseTo(6.446, 2)
    const steel = { modulus_MPa: 30e6 * PSI, shearModulus_MPa: 11.5e6 * PSI, ends: 0.5 }
    expect(steadyLength({ ...coil, ...steel }) / IN).toBeCloseTo(2.1, 2)
  })

  it('is that of a textbook in patented wire', () => {
    // SOURCE book (Jindal, Machine Design, ex. 8-6, p. 228, by a notebook that quotes it: 686.9 MPa, 41.1 N, 30.457 mm)
    const coil = { wire_mm: 1.219, mean_mm: 12.5 - 1.219 }
    const strength = 1783 / 1.219 ** 0.19
    expect(0.4 * strength).toBeCloseTo(686.86, 1)
    const force = coilForce(coil, 0.4 * strength, directShear(springIndex(coil)))
    expect(force).toBeCloseTo(41.09, 1)
    expect(force / helicalRate({ ...coil, shearModulus_MPa: 80_700, activeTurns: 11.5 })).toBeCloseTo(30.457, 1)
  })

  it('bears the load of another example in hard-drawn wire', () => {
    // SOURCE book (Jindal, Machine Design, ex. 8-8, p. 229, by a notebook that quotes it: 2 mm, 20 mm outside, 0.45 S_ut over 1.5: 77.53 N; its rate is
    // misprinted and not used)
    const coil = { wire_mm: 2, mean_mm: 18 }
    expect(coilForce(coil, (0.45 * (1783 / 2 ** 0.19)) / 1.5, directShear(9))).toBeCloseTo(77.53, 2)
  })

  it('is sized by Wahl’s correction as in a third', () => {
    // SOURCE book (Sadhu Singh, ex. 8.1, p. 227, by a notebook that quotes it: K_W 1.184, d 4.15 mm, 14 active turns)
    expect(wahl(8)).toBeCloseTo(1.18402, 5)
    const wire = Math.sqrt((8 * 300 * 8 * wahl(8)) / (Math.PI * 420))
    expect(wire).toBeCloseTo(4.1508, 3)
    expect(coilShear({ wire_mm: wire, mean_mm: 8 * wire }, 300, wahl(8))).toBeCloseTo(420, 9)
  })

  it('is bent by its own energy: the rate by twisting every piece of the wire', () => {
    // SOURCE hand (a wire of length π D N twisted by F D/2: deflection 8 F D³ N / (G d⁴))
    const coil = { wire_mm: 0.8, mean_mm: 6, shearModulus_MPa: 80_000, activeTurns: 7 }
    const twist = (1 * 3 * Math.PI * 6 * 7) / (80_000 * ((Math.PI * 0.8 ** 4) / 32))
    expect(1 / helicalRate(coil)).toBeCloseTo(twist * 3, 12)
  })
})

describe('a torsion spring', () => {
  it('is that of a textbook in music wire', () => {
    // SOURCE book (Shigley, ex. 10-8, from memory: C 7.24, K_i 1.115, 7.55 lbf·in, N_a 4.657, body 0.236 turn, coil 0.494 in inside)
    const wire_mm = 0.072 * IN
    const mean_mm = (19 / 32 - 0.072) * IN
    const coil = { wire_mm, mean_mm, modulus_MPa: 28.5e6 * PSI, bodyTurns: 4.25, legs_mm: 2 * IN }
    expect(mean_mm / wire_mm).toBeCloseTo(7.247, 3)
    expect(innerBending(mean_mm / wire_mm)).toBeCloseTo(1.1145, 3)
    expect(activeTurns(coil)).toBeCloseTo(4.6567, 4)
    const moment = torsionMoment(coil, 0.78 * (2211 / wire_mm ** 0.145))
    expect(moment / LBF / IN / 7.549).toBeCloseTo(1, 2)
    expect(bodyTurnsUnder(coil, 7.549 * LBF * IN)).toBeCloseTo(0.236, 3)
    expect((7.549 * LBF * IN) / torsionRate(coil) / (2 * Math.PI)).toBeCloseTo(0.2586, 3)
  })

  it('keeps clear of its arbour as in another', () => {
    // SOURCE book (Jindal, Machine Design, ex. 8-9, p. 230, by a notebook that quotes it: 497.25 N·mm, body 0.327 turn, legs 0.0225
    // turn, clearance 0.75 to 0.23 mm)
    const coil = { wire_mm: 1.5, mean_mm: 14.5, modulus_MPa: 200_000, bodyTurns: 4.25, legs_mm: 40 }
    const moment_Nmm = torsionMoment(coil, 0.78 * (2211 / 1.5 ** 0.145))
    expect(moment_Nmm).toBeCloseTo(497.25, 0)
    expect(bodyTurnsUnder(coil, moment_Nmm)).toBeCloseTo(0.32686, 3)
    const all = moment_Nmm / torsionRate(coil) / (2 * Math.PI)
    expect(all - bodyTurnsUnder(coil, moment_Nmm)).toBeCloseTo(0.0225, 3)
    expect(arbourClearance(coil, { moment_Nmm: 0, arbour_mm: 11.5 })).toBeCloseTo(0.75, 9)
    expect(arbourClearance(coil, { moment_Nmm, arbour_mm: 11.5 })).toBeCloseTo(0.2322, 3)
  })

  it('is bent at its inner side as a curved bar is', () => {
    // SOURCE other-method (stress of a curved round bar after Winkler: neutral radius r²/(2 (R − √(R² − r²))), σ = M (r_n − r_i)/(A (R − r_n) r_i))
    for (const index of [4, 6, 8, 12]) {
      const [mean, r] = [index, 1].map((value) => value / 2)
      const neutral = r ** 2 / (2 * (mean - Math.sqrt(mean ** 2 - r ** 2)))
      const inner = mean - r
      const exact = (neutral - inner) / (Math.PI * r ** 2 * (mean - neutral) * inner)
      expect(innerBending(index) / (exact / (32 / Math.PI))).toBeCloseTo(1, 3)
    }
  })

  it('is as stiff as its wire bent piece by piece, less what the trade takes off for friction', () => {
    // SOURCE hand (a wire of length π D N with E π d⁴/64: E d⁴/(64 D N) a radian; 10.8 stands for 64/(2π) = 10.186)
    const coil = { wire_mm: 0.8, mean_mm: 6, modulus_MPa: 200_000, bodyTurns: 7, legs_mm: 0 }
    const bent = (200_000 * ((Math.PI * 0.8 ** 4) / 64)) / (Math.PI * 6 * 7)
    expect(torsionRate(coil) / bent).toBeCloseTo(64 / (2 * Math.PI) / 10.8, 12)
  })
})
