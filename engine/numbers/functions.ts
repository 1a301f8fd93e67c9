import { type Powers, plainNumber, powersText, raised, samePowers } from './powers.ts'

/** A function of expressions: what it takes and gives, and its value in base units (angles in rad). */
interface NamedFunction {
  readonly least: number
  readonly most: number
  /** Powers of the result, or what it needs instead of what it was given. */
  readonly powers: (given: readonly Powers[]) => Powers | { readonly needed: string }
  readonly value: (given: readonly number[]) => number
}

const angle: Powers = { ...plainNumber, angle: 1 }

const takesAngle = (value: (x: number) => number): NamedFunction => ({
  least: 1,
  most: 1,
  powers: ([x]) => (samePowers(x, angle) ? plainNumber : { needed: 'an angle, such as 30 deg' }),
  value: ([x]) => value(x),
})

const givesAngle = (value: (x: number) => number): NamedFunction => ({
  least: 1,
  most: 1,
  powers: ([x]) => (samePowers(x, plainNumber) ? angle : { needed: 'a plain number' }),
  value: ([x]) => value(x),
})

/** All arguments alike; `result` makes the powers of the result from theirs. */
const takesAlike = (most: number, value: (given: readonly number[]) => number, result = (x: Powers) => x): NamedFunction => ({
  least: most === 1 ? 1 : 2,
  most,
  powers: (given) =>
    given.every((x) => samePowers(x, given[0]))
      ? result(given[0])
      : { needed: `all of one kind (the first is in ${powersText(given[0])})` },
  value,
})

/** Arguments of min, max and hypot; expressions are short enough without a tighter bound. */
const manyArguments = 100

const functions: ReadonlyMap<string, NamedFunction> = new Map([
  ['sin', takesAngle(Math.sin)],
  ['cos', takesAngle(Math.cos)],
  ['tan', takesAngle(Math.tan)],
  ['asin', givesAngle(Math.asin)],
  ['acos', givesAngle(Math.acos)],
  ['atan', givesAngle(Math.atan)],
  [
    'atan2',
    takesAlike(
      2,
      ([y, x]) => (y === 0 && x === 0 ? Number.NaN : Math.atan2(y, x)),
      () => angle,
    ),
  ],
  ['hypot', takesAlike(manyArguments, (given) => Math.hypot(...given))],
  ['min', takesAlike(manyArguments, (given) => Math.min(...given))],
  ['max', takesAlike(manyArguments, (given) => Math.max(...given))],
  ['abs', takesAlike(1, ([x]) => Math.abs(x))],
  [
    'sqrt',
    takesAlike(
      1,
      ([x]) => Math.sqrt(x),
      (x) => raised(x, 0.5),
    ),
  ],
])

/** Names of the functions that an expression may use. */
export const functionNames: readonly string[] = [...functions.keys()]

/** Whether an expression may use a function of that name; names keep their case. */
export function isFunctionName(name: string): boolean {
  return functions.has(name)
}

/** The function of that name, which the parser has found to exist. */
export function functionNamed(name: string): NamedFunction {
  const found = functions.get(name)
  if (!found) throw new Error(`no function ${name}`)
  return found
}
