/**
 * Joints whose friction makes an amplitude worse on one side, whatever the other joints do.
 *
 *     dλ/dκ_k = s_k (ℓ_k − w · (R·Y_k)/|R|)      Jᵀ w = κ ℓ      J_jk = κ_k (R_j·Y_jk)/|R_j| − δ_jk      (rest-state.ts)
 *
 * In every state of rest |(R_j·Y_jk)/|R_j|| ≤ |Y_jk|. Let m_jk = |κ_k| |Y_jk|. Where its row sums are below 1 each state has one
 * solution, and w is within ±W with (1 − mᵀ) W = |κ| |ℓ|. So where
 *
 *     Σ_j W_j |Y_jk| < |ℓ_k|
 *
 * the derivative has the sign of ℓ_k in all states, and the worst state has that joint on that side. Far from a jam this settles every
 * joint without a search.
 */
import { factor, solveTransposed } from '../numbers/lu.ts'
import type { Prepared } from './balance.ts'
import { fillGeneral } from './general-way.ts'
import type { Magnitudes } from './magnitudes.ts'

/**
 * Whether friction is too weak to bend the equations of a question: its influence is a contraction, row sums below 1.
 *
 * @param levers |κ| of each joint
 */
export function isContraction({ count, sizes }: Magnitudes, levers: Float64Array): boolean {
  for (let j = 0; j < count; j++) {
    let sum = 0
    for (let k = 0; k < count; k++) sum += levers[k] * sizes[j * count + k]
    if (sum >= 1) return false
  }
  return true
}

/**
 * Sides of friction that are certain to be the worst.
 *
 * @param levers |κ| of each joint
 * @param towards +1 for the largest amplitude, −1 for the least
 * @returns +1 or −1 for each joint that is certain, 0 for the others; undefined where none is
 */
export function certainSides(prepared: Prepared, levers: Float64Array, towards: 1 | -1): Float64Array | undefined {
  fillGeneral(prepared)
  const { magnitudes, slots, questionRates } = prepared.room
  if (slots.length > 0 || !isContraction(magnitudes, levers)) return undefined
  const { count, sizes } = magnitudes
  const bound = adjointBound(prepared, levers)
  if (!bound) return undefined
  const sides = prepared.room.stock(count)
  for (let k = 0; k < count; k++) {
    let most = 0
    for (let j = 0; j < count; j++) most += bound[j] * sizes[j * count + k]
    const own = questionRates[k] / prepared.portPower
    if (most < Math.abs(own)) sides[k] = own < 0 ? -towards : towards
  }
  return sides
}

/** W: the most that each component of the adjoint can be. */
function adjointBound({ room, portPower }: Prepared, levers: Float64Array): Float64Array | undefined {
  const { magnitudes, questionRates } = room
  const { count, sizes, lu } = magnitudes
  for (let j = 0; j < count; j++) {
    for (let k = 0; k < count; k++) {
      const at = j * count + k
      lu.factors[at] = (j === k ? 1 : 0) - levers[k] * sizes[at]
    }
  }
  if (!factor(lu)) return undefined
  const bound = room.stock(count)
  for (let k = 0; k < count; k++) bound[k] = (levers[k] * Math.abs(questionRates[k])) / Math.abs(portPower)
  solveTransposed(lu, bound)
  return bound
}
