/**
 * Worst state of rest: the least or largest amplitude over all friction states of the joints.
 *
 * At rest each joint's friction may stand anywhere between −κ and +κ; the extreme lies at a corner. Start at the corner
 * that opposes the motion about to start. Joints whose side is certain (certain-sides.ts) stay on it; where all are, that corner is the
 * worst. Otherwise the derivative of the amplitude with respect to every κ at once comes from one adjoint
 * solve,
 *
 *     dλ/dκ_k = s_k (ℓ_k − w · (R·Y_k)/|R|),   Jᵀ w = κ ℓ,   J = ∂F/∂s
 *
 * says which of the others to turn over. Where friction changes the amplitude by more than `limits.mildFriction_ratio` of its
 * frictionless value (near a jam), single joints are then turned over until none helps; where it is milder the slope decides,
 * unless a corner on its way has no equilibrium. Corners without an equilibrium are passed over. Tested against all 2^n corners of random mechanisms.
 */
import { copied } from '../numbers/array-stock.ts'
import { limits } from '../numbers/limits.ts'
import { factor, solveTransposed } from '../numbers/lu.ts'
import { againstMotion, amplitudeIn, type Balance, balanceNow, type FillLevers, type Prepared } from './balance.ts'
import { certainSides } from './certain-sides.ts'
import { fillGeneral } from './general-way.ts'
import { fillDerivative } from './magnitudes.ts'

export interface RestSearch {
  readonly prepared: Prepared
  /** |κ| of each joint at rest. */
  readonly levers: Float64Array
  /** Joints whose friction may stand either way; the others oppose the motion about to start. All, when left out. */
  readonly either?: Uint8Array
  /**
   * For the drag at every pin: an amplitude that is bad enough. Past it the search ends with what the slope has found (deep in a jam the
   * amplitude has poles of its own and only its sign is used), and where friction is mild the slope decides. Other ports have no such
   * smooth question: there every joint is tried.
   */
  readonly enough?: number
  /** +1 looks for the largest amplitude, −1 for the least. */
  readonly towards: 1 | -1
}

interface Corner {
  readonly sides: Float64Array
  readonly amplitude: number
  readonly magnitudes: Float64Array
}

/** @returns the worst state found, or undefined when no corner had an equilibrium */
export function worstRest(search: RestSearch): Balance | undefined {
  const amplitude = worstAmplitude(search)
  return amplitude === undefined ? undefined : balanceNow(search.prepared, amplitude)
}

/** Amplitude of the worst state, which is left in the room. */
export function worstAmplitude(search: RestSearch): number | undefined {
  const { prepared, either } = search
  if (either && !either.includes(1)) return amplitudeIn(prepared, againstMotion(search.levers))
  const { sides, open } = beginning(search)
  if (!open.includes(1)) return amplitudeIn(prepared, leversAt(search, sides))
  const moving = cornerAt(search, sides)
  const start =
    moving ??
    cornerAt(
      search,
      sides.map((side, joint) => (open[joint] === 1 ? 0 : side)),
    )
  if (!start) return undefined
  const { corner, blocked } = bySlope(search, start, open)
  const mild = search.enough !== undefined && moving !== undefined && !blocked && isMild(prepared, corner)
  const worst = mild || isEnough(search, corner) ? corner : turnedOver(search, corner, open)
  if (isInRoom(prepared, worst)) return worst.amplitude
  return amplitudeIn(prepared, leversAt(search, worst.sides), worst.magnitudes)
}

/** Against the motion about to start, but for the joints whose worst side is certain; `open` is 1 for those still to decide. */
function beginning({ prepared, levers, either, towards }: RestSearch): { sides: Float64Array; open: Uint8Array } {
  const certain = certainSides(prepared, levers, towards)
  const open = new Uint8Array(levers.length)
  const sides = copied(prepared.room.stock, prepared.room.questionRates)
  for (let joint = 0; joint < sides.length; joint++) {
    if (either?.[joint] === 0) sides[joint] = Math.sign(sides[joint])
    else if (certain && certain[joint] !== 0) sides[joint] = certain[joint]
    else {
      if (levers[joint] !== 0) open[joint] = 1
      sides[joint] = sides[joint] < 0 ? -1 : 1
    }
  }
  return { sides, open }
}

/** Whether a corner was the last to be solved, so that its forces still stand in the room. */
function isInRoom({ room }: Prepared, { magnitudes }: Corner): boolean {
  return magnitudes.every((magnitude, joint) => magnitude === room.magnitudes.values[joint])
}

function isEnough({ enough, towards }: RestSearch, { amplitude }: Corner): boolean {
  return enough !== undefined && towards * (amplitude - enough) > 0
}

/** Friction that takes less than a share of the frictionless amplitude bends it too little for the slope to mislead. */
function isMild({ freeAmplitude }: Prepared, { amplitude }: Corner): boolean {
  return Math.abs(amplitude - freeAmplitude) < limits.mildFriction_ratio * Math.abs(freeAmplitude)
}

function leversAt({ levers }: RestSearch, sides: Float64Array): FillLevers {
  return (_, out) => {
    for (let joint = 0; joint < out.length; joint++) out[joint] = sides[joint] * levers[joint]
  }
}

function cornerAt(search: RestSearch, sides: Float64Array, near?: Corner): Corner | undefined {
  const amplitude = amplitudeIn(search.prepared, leversAt(search, sides), near?.magnitudes)
  return amplitude === undefined ? undefined : cornerNow(search, sides, amplitude)
}

/** The corner that was solved last, kept. */
function cornerNow({ prepared }: RestSearch, sides: Float64Array, amplitude: number): Corner {
  const { stock, magnitudes } = prepared.room
  return { sides: copied(stock, sides), amplitude, magnitudes: copied(stock, magnitudes.values) }
}

function isWorse({ towards }: RestSearch, amplitude: number, than: number): boolean {
  return towards * (amplitude - than) > limits.restGain_ratio * Math.abs(than)
}

/**
 * Turns over all joints that the slope asks for, as long as that makes the state worse.
 *
 * @returns `blocked` when the corner that the slope asks for has no equilibrium, so that the slope decides nothing
 */
function bySlope(search: RestSearch, start: Corner, open: Uint8Array): { readonly corner: Corner; readonly blocked: boolean } {
  let best = start
  for (let round = 0; round < limits.restRounds; round++) {
    const sides = sidesBySlope(search, best.sides, open)
    if (!sides || sides.every((side, joint) => side === best.sides[joint])) break
    const next = cornerAt(search, sides, best)
    if (!next) return { corner: best, blocked: true }
    if (!isWorse(search, next.amplitude, best.amplitude)) break
    best = next
  }
  return { corner: best, blocked: false }
}

/** Sides that the slope asks for at the state that was solved last. */
function sidesBySlope({ prepared, towards }: RestSearch, sides: Float64Array, open: Uint8Array): Float64Array | undefined {
  fillGeneral(prepared)
  const { portPower, room } = prepared
  const { questionRates: rates, levers: now, magnitudes } = room
  const { count, influence, forces, lu, values } = magnitudes
  const scale = values.reduce((most, value) => Math.max(most, value), 0)
  fillDerivative(magnitudes, now, scale)
  if (!factor(lu)) return undefined
  const adjoint = now.map((lever, joint) => (lever * rates[joint]) / portPower)
  solveTransposed(lu, adjoint)
  return sides.map((side, k) => {
    if (open[k] === 0) return side
    let pull = rates[k] / portPower
    for (let j = 0; j < count; j++) {
      const size = Math.max(
        Math.sqrt(forces[2 * j] * forces[2 * j] + forces[2 * j + 1] * forces[2 * j + 1]),
        limits.unloaded_ratio * scale,
      )
      const at = 2 * (j * count + k)
      pull -= (adjoint[j] * (forces[2 * j] * influence[at] + forces[2 * j + 1] * influence[at + 1])) / size
    }
    return towards * pull < 0 ? -1 : 1
  })
}

/** Turns single joints over as long as one makes the state worse. */
function turnedOver(search: RestSearch, start: Corner, open: Uint8Array): Corner {
  let best = start
  const sides = copied(search.prepared.room.stock, start.sides)
  let untried = sides.length
  for (let joint = 0; untried > 0; joint = (joint + 1) % sides.length, untried--) {
    if (open[joint] === 0) continue
    sides[joint] = best.sides[joint] > 0 ? -1 : 1
    const amplitude = amplitudeIn(search.prepared, leversAt(search, sides), best.magnitudes)
    if (amplitude !== undefined && isWorse(search, amplitude, best.amplitude)) {
      best = cornerNow(search, sides, amplitude)
      untried = sides.length
    } else sides[joint] = best.sides[joint]
  }
  return best
}
