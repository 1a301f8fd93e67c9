/**
 * A pin as a beam under what its plates give it.
 *
 *        ┌──┐   ┌────┐   ┌──┐        each plate presses with its force spread evenly over its slice;
 *     ───┤  ├───┤    ├───┤  ├───     V = ∫ q dz,  M = ∫ V dz from the free end
 *        └──┘   └────┘   └──┘
 *          ↓     ↑  ↑     ↓   z →
 *
 * Two plates on two others balance by themselves. A plate beside another leaves a couple over; the part that the pin is fixed in
 * gives it back by a pressure that grows linearly across its slices, as a stiff pin in a stiff bore does. Even pressure is the
 * usual assumption for pins of ordinary fit and errs to the safe side: a pin that bends presses harder at the inner faces,
 * and its moment is smaller.
 *
 * Method: beams by cuts (any text on mechanics of materials, e.g. Beer & Johnston, ch. 5, from memory).
 */

/** What one slice of a part gives to the pin: forces on the pin in the plane of motion, N, over a stretch of its length, mm. */
export interface PinPlate {
  readonly from_mm: number
  readonly to_mm: number
  readonly x_N: number
  readonly y_N: number
  /** Whether the pin is fixed in this slice, so that it can give a couple. */
  readonly fixed: boolean
}

export interface PinBeam {
  /** Largest shear force, N. */
  readonly shear_N: number
  /** Largest bending moment, N·mm. */
  readonly moment_Nmm: number
}

/** Pressure on a stretch of the pin along one axis of the plane: q = at + slope (z − from). N/mm. */
export interface Stretch {
  readonly from_mm: number
  readonly to_mm: number
  readonly at: number
  readonly slope: number
}

/**
 * Largest shear and bending moment of a pin.
 *
 * @param plates with forces that sum to nothing; slices of one part do not overlap
 * @returns exact where all forces lie in one line; where three parts pull in different directions, the largest over the ends and the
 *          stationary places of both components. undefined where a couple is left over and no slice is fixed
 */
export function pinBeam(plates: readonly PinPlate[]): PinBeam | undefined {
  const x = component(plates, ({ x_N }) => x_N)
  const y = component(plates, ({ y_N }) => y_N)
  return x && y && beamUnder(x, y)
}

/** Largest shear and bending moment of a pin under pressures along both axes of the plane, each in balance. */
export function beamUnder(x: readonly Stretch[], y: readonly Stretch[]): PinBeam {
  const places = [...placesOf(x), ...placesOf(y)]
  let shear_N = 0
  let moment_Nmm = 0
  for (const z of places) {
    const [one, other] = [cut(x, z), cut(y, z)]
    shear_N = Math.max(shear_N, Math.hypot(one.shear, other.shear))
    moment_Nmm = Math.max(moment_Nmm, Math.hypot(one.moment, other.moment))
  }
  return { shear_N, moment_Nmm }
}

/** Pressures along one axis, with the couple that the fixed slices give. */
function component(plates: readonly PinPlate[], forceOf: (plate: PinPlate) => number): Stretch[] | undefined {
  const couple = plates.reduce((sum, plate) => sum + forceOf(plate) * middle(plate), 0)
  const size = plates.reduce((sum, plate) => sum + Math.abs(forceOf(plate)) * (plate.to_mm - plate.from_mm), 0)
  const fixed = plates.filter((plate) => plate.fixed)
  const leftOver = Math.abs(couple) > BALANCED_ratio * size
  if (leftOver && fixed.length === 0) return undefined
  const length = fixed.reduce((sum, { from_mm, to_mm }) => sum + to_mm - from_mm, 0)
  const centre = fixed.reduce((sum, plate) => sum + (plate.to_mm - plate.from_mm) * middle(plate), 0) / length
  const stiffness = fixed.reduce((sum, { from_mm, to_mm }) => sum + ((to_mm - centre) ** 3 - (from_mm - centre) ** 3) / 3, 0)
  const slope = leftOver ? -couple / stiffness : 0
  return plates.map((plate) => {
    const { from_mm, to_mm } = plate
    const even = forceOf(plate) / (to_mm - from_mm)
    const at = plate.fixed && leftOver ? even + slope * (from_mm - centre) : even
    return { from_mm, to_mm, at, slope: plate.fixed ? slope : 0 }
  })
}

/** A couple below this share of force times width is rounding. */
const BALANCED_ratio = 1e-9

function middle({ from_mm, to_mm }: { readonly from_mm: number; readonly to_mm: number }): number {
  return (from_mm + to_mm) / 2
}

/** Shear and moment at a cut: the sums over what lies before it. */
function cut(stretches: readonly Stretch[], z: number): { readonly shear: number; readonly moment: number } {
  let shear = 0
  let moment = 0
  for (const { from_mm, to_mm, at, slope } of stretches) {
    const reach = Math.min(z, to_mm) - from_mm
    if (reach <= 0) continue
    const force = at * reach + (slope * reach ** 2) / 2
    shear += force
    const ownMoment = (at * reach ** 2) / 2 + (slope * reach ** 3) / 6
    moment += ownMoment + Math.max(0, z - to_mm) * force
  }
  return { shear, moment }
}

/** Ends of the stretches, and places between them where the pressure or the shear is zero. */
function placesOf(stretches: readonly Stretch[]): number[] {
  const ends = [...new Set(stretches.flatMap(({ from_mm, to_mm }) => [from_mm, to_mm]))].sort((a, b) => a - b)
  const between = ends.slice(1).flatMap((to, index) => {
    const from = ends[index]
    const over = stretches.filter(({ from_mm, to_mm }) => from_mm <= from && to_mm >= to)
    const slope = over.reduce((sum, stretch) => sum + stretch.slope, 0)
    const at = over.reduce((sum, stretch) => sum + stretch.at + stretch.slope * (from - stretch.from_mm), 0)
    const shear = cut(stretches, from).shear
    return [...zeroesOf({ shear, at, slope })].map((reach) => from + reach).filter((z) => z > from && z < to)
  })
  return [...ends, ...between]
}

/** Where q = at + slope s, or V = shear + at s + slope s²/2, is zero. */
function zeroesOf({ shear, at, slope }: { readonly shear: number; readonly at: number; readonly slope: number }): number[] {
  const ofPressure = slope === 0 ? [] : [-at / slope]
  if (slope === 0) return at === 0 ? [] : [-shear / at]
  const root = Math.sqrt(at * at - 2 * slope * shear)
  return Number.isNaN(root) ? ofPressure : [...ofPressure, (-at + root) / slope, (-at - root) / slope]
}
