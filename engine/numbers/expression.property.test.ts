import fc from 'fast-check'
import { all, create } from 'mathjs'
import { expect, it } from 'vitest'
import { type Expression, readExpression } from './expression.ts'
import { limits } from './limits.ts'
import { measure } from './measure.ts'
import { kindOf, parseQuantity, type QuantityKind } from './quantity.ts'

const oracle = create(all)
const seed = 20_261_125
const runs = 10_000
/** The oracle takes ten times as long as we do. */
const oracleRuns = 3_000

/** One expression in our spelling and in the oracle's, with its value in mm, N and rad to keep it well-conditioned. */
interface Trial {
  readonly ours: string
  readonly theirs: string
  readonly value: number
}

/** The oracle reads no fractions before units and no degree sign, so a literal is spelled for it in brackets. */
function literal(units: readonly (readonly [ours: string, theirs: string, factor: number])[]): fc.Arbitrary<Trial> {
  const amount = fc.oneof(
    fc.integer({ min: 1, max: 999 }).map((n) => ({ ours: `${n}`, theirs: `${n}`, value: n })),
    fc.integer({ min: 1, max: 99_999 }).map((n) => ({ ours: `${n / 1000}`, theirs: `${n / 1000}`, value: n / 1000 })),
    fc.tuple(fc.integer({ min: 1, max: 63 }), fc.constantFrom(2, 4, 8, 16, 32, 64)).map(([n, over]) => ({
      ours: `${n}/${over}`,
      theirs: `(${n}/${over})`,
      value: n / over,
    })),
    fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 15 })).map(([whole, n]) => ({
      ours: `${whole} ${n}/16`,
      theirs: `(${whole}+${n}/16)`,
      value: whole + n / 16,
    })),
  )
  return fc.tuple(amount, fc.constantFrom(...units)).map(([n, [ours, theirs, factor]]) => ({
    ours: `${n.ours} ${ours}`,
    theirs: `(${n.theirs} * 1 ${theirs})`,
    value: n.value * factor,
  }))
}

const bracketed = ({ ours }: Trial) => `(${ours})`

/** A difference that cancels loses digits in both, for no fault of theirs; then it becomes a sum. */
function plusOrMinus([a, b, isMinus]: readonly [Trial, Trial, boolean]): Trial {
  const difference = a.value - b.value
  const sign = isMinus && Math.abs(difference) > 0.1 * (Math.abs(a.value) + Math.abs(b.value)) ? '-' : '+'
  const sum = a.value + b.value
  if (sign === '+' && Math.abs(sum) < 0.1 * (Math.abs(a.value) + Math.abs(b.value))) return a
  return {
    ours: `${bracketed(a)} ${sign} ${bracketed(b)}`,
    theirs: `(${a.theirs} ${sign} ${b.theirs})`,
    value: sign === '-' ? difference : sum,
  }
}

const times = ([a, b]: readonly [Trial, Trial]): Trial => ({
  ours: `${bracketed(a)} · ${bracketed(b)}`,
  theirs: `(${a.theirs} * ${b.theirs})`,
  value: a.value * b.value,
})

const over = ([a, b]: readonly [Trial, Trial]): Trial => ({
  ours: `${bracketed(a)}/${bracketed(b)}`,
  theirs: `(${a.theirs} / ${b.theirs})`,
  value: a.value / b.value,
})

const negative = (a: Trial): Trial => ({ ours: `−${bracketed(a)}`, theirs: `(-${a.theirs})`, value: -a.value })

const squareRoot = (a: Trial): Trial => ({
  ours: `sqrt(abs(${a.ours}))`,
  theirs: `sqrt(abs(${a.theirs}))`,
  value: Math.sqrt(Math.abs(a.value)),
})

function least([a, b]: readonly [Trial, Trial]): Trial {
  return { ours: `min(${a.ours}, ${b.ours})`, theirs: `min(${a.theirs}, ${b.theirs})`, value: Math.min(a.value, b.value) }
}

function longestSide([a, b]: readonly [Trial, Trial]): Trial {
  return {
    ours: `hypot(${a.ours}, ${b.ours})`,
    theirs: `sqrt((${a.theirs})^2 + (${b.theirs})^2)`,
    value: Math.hypot(a.value, b.value),
  }
}

/** Near a zero of the sine the argument's rounding is all that is left; the cosine is taken there. */
function sineOrCosine(a: Trial): Trial {
  const name = Math.abs(Math.sin(a.value)) > 0.3 ? 'sin' : 'cos'
  return { ours: `${name}(${a.ours})`, theirs: `${name}(${a.theirs})`, value: Math[name](a.value) }
}

const direction = ([y, x]: readonly [Trial, Trial]): Trial => ({
  ours: `atan2(${y.ours}, ${x.ours})`,
  theirs: `(atan2((${y.theirs}) / (1 mm), (${x.theirs}) / (1 mm)) * 1 rad)`,
  value: Math.atan2(y.value, x.value),
})

const inch = 25.4
const pound = 4.4482216152605

const { length, force, angle, couple, number } = fc.letrec<Record<'length' | 'force' | 'angle' | 'couple' | 'number', Trial>>(
  (tie) => {
    const two = (kind: 'length' | 'force' | 'angle' | 'couple' | 'number') => fc.tuple(tie(kind), tie(kind))
    const sum = (kind: 'length' | 'force' | 'angle' | 'couple' | 'number') =>
      fc.tuple(tie(kind), tie(kind), fc.boolean()).map(plusOrMinus)
    const depth = { depthSize: 'small', maxDepth: 3 } as const
    return {
      length: fc.oneof(
        depth,
        literal([
          ['mm', 'mm', 1],
          ['um', 'um', 0.001],
          ['cm', 'cm', 10],
          ['m', 'm', 1000],
          ['in', 'in', inch],
          ['"', 'in', inch],
          ['ft', 'ft', 12 * inch],
        ]),
        sum('length'),
        fc.tuple(tie('length'), tie('number')).map(times),
        fc.tuple(tie('length'), tie('number')).map(over),
        fc.tuple(tie('couple'), tie('force')).map(over),
        two('length').map(times).map(squareRoot),
        two('length').map(least),
        two('length').map(longestSide),
        tie('length').map(negative),
      ),
      force: fc.oneof(
        depth,
        literal([
          ['N', 'N', 1],
          ['kN', 'kN', 1000],
          ['lbf', 'lbf', pound],
        ]),
        sum('force'),
        fc.tuple(tie('number'), tie('force')).map(times),
        fc.tuple(tie('couple'), tie('length')).map(over),
      ),
      angle: fc.oneof(
        depth,
        literal([
          ['deg', 'deg', Math.PI / 180],
          ['°', 'deg', Math.PI / 180],
          ['rad', 'rad', 1],
        ]),
        sum('angle'),
        two('length').map(direction),
      ),
      couple: fc.oneof(depth, fc.tuple(tie('force'), tie('length')).map(times), sum('couple')),
      number: fc.oneof(
        depth,
        fc.integer({ min: 1, max: 9999 }).map((n) => ({ ours: `${n / 100}`, theirs: `${n / 100}`, value: n / 100 })),
        sum('number'),
        two('length').map(over),
        two('force').map(over),
        two('number').map(times),
        tie('angle').map(sineOrCosine),
      ),
    }
  },
)

const oracleUnit = { length: 'mm', force: 'N', angle: 'rad', couple: 'N mm', number: undefined } as const

function oracleValue(text: string, unit: string | undefined): number {
  const value = oracle.evaluate(text)
  return unit === undefined ? Number(value) : value.toNumber(unit)
}

/** Both sides round each of up to some hundred steps once, and the steps lose at most a digit each. */
const agreement_ratio = 1e-12

it('agrees with a general-purpose library on 3,000 random expressions', () => {
  const anyKind = fc.oneof(
    ...(
      [
        ['length', length],
        ['force', force],
        ['angle', angle],
        ['couple', couple],
        ['number', number],
      ] as const
    ).map(([kind, trial]) => trial.map((made) => ({ kind, made }))),
  )
  fc.assert(
    fc.property(anyKind, ({ kind, made }) => {
      fc.pre(made.ours.length <= limits.expressionLength)
      const expression = readExpression(made.ours).value
      const measured = expression && measure(expression, new Map()).value
      // SOURCE other-method (mathjs 15.2.0)
      const expected = oracleValue(made.theirs, oracleUnit[kind])
      expect(measured && kindOf(measured.powers)).toBe(kind)
      expect(Math.abs((measured?.value ?? Number.NaN) - expected)).toBeLessThanOrEqual(agreement_ratio * Math.abs(expected))
    }),
    { seed, numRuns: oracleRuns },
  )
})

function nodes(expression: Expression): number {
  switch (expression.kind) {
    case 'amount':
    case 'name':
      return 1
    case 'negative':
      return 1 + nodes(expression.of)
    case 'operation':
      return 1 + nodes(expression.left) + nodes(expression.right)
    case 'call':
      return 1 + expression.of.reduce((sum, argument) => sum + nodes(argument), 0)
  }
}

const kinds: readonly QuantityKind[] = ['length', 'angle', 'force', 'couple', 'torsionRate', 'mass', 'density', 'number']
const pieces = fc.constantFrom(
  ...[
    '1',
    '2.5',
    '1e3',
    '1/4',
    '0',
    '1e308',
    '9'.repeat(40),
    'mm',
    'in',
    '"',
    '°',
    'deg',
    'rad',
    'N',
    'lbf',
    'lb',
    'g',
    'cm^3',
    '%',
  ],
  ...['+', '-', '−', '*', '·', '/', '^', '(', ')', ',', ' ', '²', '³', 'sin', 'sqrt', 'atan2', 'hypot', 'min', 'asin', 'pi'],
  ...[
    'a',
    'length',
    'constructor',
    '__proto__',
    'hasOwnProperty',
    'NaN',
    'Infinity',
    '√',
    '\u0000',
    '\ud800',
    '"',
    "'",
    '\\',
    '\n',
  ],
)
const strings = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
  fc.array(pieces, { maxLength: 30 }).map((parts) => parts.join('')),
  fc.array(pieces, { maxLength: 30 }).map((parts) => parts.join(' ')),
  fc.array(pieces, { minLength: 300, maxLength: 500 }).map((parts) => parts.join('')),
  fc.nat({ max: 500 }).map((depth) => '('.repeat(depth)),
  fc.nat({ max: 500 }).map((depth) => `1${'^-2'.repeat(depth)}`),
)
const names = new Map([['a', { value: 44, powers: { length: 1, force: 0, time: 0, angle: 0 } }]])

it('gives 10,000 random texts a finite value or a fault inside the text, with work bounded by the length of the text', () => {
  let values = 0
  fc.assert(
    fc.property(strings, fc.constantFrom(...kinds), (text, kind) => {
      const expression = readExpression(text)
      if (expression.value) expect(nodes(expression.value)).toBeLessThanOrEqual(Math.min(text.length, limits.expressionLength))
      const { value, fault } = parseQuantity(text, kind, names)
      if (fault) {
        expect(fault.column).toBeGreaterThanOrEqual(1)
        expect(fault.column).toBeLessThanOrEqual(text.length + 1)
        expect(fault.found.length).toBeGreaterThan(0)
        expect(fault.needed.length).toBeGreaterThan(0)
      } else {
        values++
        expect(Number.isFinite(value)).toBe(true)
      }
    }),
    { seed, numRuns: runs },
  )
  expect(values).toBeGreaterThan(0)
})
