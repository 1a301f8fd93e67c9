/** How what is told of a figure over the sets comes about: counted, straight, at the corners, where it comes from, what it goes with. */
import type { FigureUnit, Working, WorkingValue } from '../../figures/evaluation.ts'
import type { DesignSpread } from '../spread/design-spread.ts'
import { type FigureSpread, quantileShares } from '../spread/figure-spread.ts'
import type { SpreadFigure } from '../spread/spread.ts'
import { countLine, shareLine } from './share-working.ts'

const SOURCE = 'docs/theory/spread.md'

/** Digits that tell quantiles of a narrow spread apart. */
const VALUE_digits = 5

const PERCENT = 100

/** Workings of one figure. @param figure its place in the list of figures */
export function figureWorkings(told: DesignSpread, figure: number): readonly Working[] {
  const { unit } = told.figures[figure]
  const { counted, ...spread } = told.spread.figures[figure]
  const middle = told.spread.plan.steps.middle.values[figure]
  return [
    ...(counted === undefined ? [] : [quantileWorking(counted, unit)]),
    straightWorking({ ...spread, middle }, unit),
    worstWorking({ ...spread, middle }, unit),
    ...contributionWorking(told, figure),
    ...correlationWorking(told, figure),
  ]
}

/** Mean, deviation and quantiles of counted values. */
export function quantileWorking(counted: FigureSpread, unit: FigureUnit): Working {
  const { samples, without, mean, deviation, least, most, quantiles } = counted
  const own = (name: string, value: number): WorkingValue => ({ name, value, unit, digits: VALUE_digits })
  return {
    method:
      'Counted: the values of all sets in ascending order. A quantile is the value below which its share of them lies, between two sets by proportion. Beyond the last set nothing is claimed.',
    formulas: [
      'x_q = x_{(1 + q\\,(n-1))} \\qquad \\bar x = \\tfrac{1}{n} \\sum x_i \\qquad s^2 = \\tfrac{1}{n-1} \\sum (x_i - \\bar x)^2',
    ],
    inputs: [countLine('n, sets with a value', samples), countLine('sets without one', without)],
    steps: [
      own('least', least),
      ...quantiles.map((value, index) => own(`${Number((PERCENT * quantileShares[index]).toPrecision(5))} % lie below`, value)),
      own('most', most),
      own('x̄, mean', mean),
      own('s, deviation', deviation),
    ],
    source: `${SOURCE}, Samples (common knowledge)`,
  }
}

interface AboutMiddle extends Pick<SpreadFigure, 'straight' | 'worst'> {
  /** The value of the set with every source in its middle; NaN where it has none. */
  readonly middle: number
}

function middleLine(middle: number, unit: FigureUnit): WorkingValue {
  const name = 'every source in its middle'
  return Number.isNaN(middle) ? { name, value: 'no value', unit: 'words' } : { name, value: middle, unit, digits: VALUE_digits }
}

function straightWorking({ straight, middle }: AboutMiddle, unit: FigureUnit): Working {
  const own = (name: string, value: number): WorkingValue => ({ name, value, unit, digits: VALUE_digits })
  return {
    method:
      'Root-sum-square: the root of the sum of squares of what one deviation of each source does, three deviations either side of the middle. It is told only where curves add less than a tenth of the deviation and no set on the way fails. Three deviations of a source that is as likely anywhere within its limits lie beyond them: then it is wider than the worst case.',
    formulas: ['\\sigma = \\sqrt{\\sum b_i^2} \\qquad x_{\\text{middle}} \\pm 3\\sigma'],
    inputs: [middleLine(middle, unit)],
    steps:
      straight.kind === 'linear'
        ? [own('σ', straight.deviation), own('from', straight.least), own('to', straight.most)]
        : [{ name: straight.kind, value: straight.why, unit: 'words' }],
    source: `${SOURCE}, Three answers to one question (common knowledge)`,
  }
}

function worstWorking({ worst, middle }: AboutMiddle, unit: FigureUnit): Working {
  const end = (name: string, { value, failure }: SpreadFigure['worst']['least']): WorkingValue =>
    value === undefined ? { name, value: failure ?? 'no value', unit: 'words' } : { name, value, unit, digits: VALUE_digits }
  return {
    method:
      'Worst case: every source at the end of what the drawing allows, on the side that moves the figure most, and that set judged. It bounds the figure where the figure only rises or only falls with each source: not where the middle, or a counted set that is within the drawing, lies beyond a corner.',
    formulas: ['x_i = \\text{limit on the side of } \\operatorname{sign}(b_i)'],
    inputs: [middleLine(middle, unit)],
    steps: [
      end('least corner', worst.least),
      end('most corner', worst.most),
      { name: 'the corners bound it', value: worst.isBounding, unit: 'yes or no' },
    ],
    source: `${SOURCE}, Three answers to one question`,
  }
}

function contributionWorking({ spread, sources, figures }: DesignSpread, figure: number): readonly Working[] {
  const { contributions } = spread.figures[figure]
  if (!contributions) return []
  const { shares, effects, rest } = contributions
  const { unit } = figures[figure]
  const ranked = [...shares.keys()].sort((one, other) => shares[other] - shares[one])
  return [
    {
      method:
        'Where its variance comes from: the figure is fitted by a sum over the sources, each in deviations from its mean. What a fit of noise would add is taken off. Shares and rest sum to 1; the rest is what is curved, acts only together, or jumps. They are shares of variance, not of failures.',
      formulas: [
        'x = c + \\sum b_i z_i + \\text{rest} \\qquad \\text{share}_i = \\frac{b_i^2}{\\sum b_j^2 + \\operatorname{Var}(\\text{rest})}',
      ],
      inputs: ranked.map((source) => {
        return { name: `b of ${sources[source].words}`, value: effects[source], unit, from: sources[source].id }
      }),
      steps: [
        ...ranked.map((source) => shareLine(`share of ${sources[source].words}`, shares[source])),
        shareLine('rest', rest),
        shareLine(
          'sum',
          shares.reduce((sum, share) => sum + share, rest),
        ),
      ],
      source: `${SOURCE}, Where it comes from (least squares, common knowledge)`,
    },
  ]
}

function correlationWorking({ spread, figures }: DesignSpread, figure: number): readonly Working[] {
  const others = spread.correlations[figure].flatMap((value, other) =>
    value === undefined || other === figure ? [] : [shareLine(figures[other].title, value)],
  )
  if (others.length === 0) return []
  return [
    {
      method: 'What it goes with: the correlation with each other figure over the sets, from −1 to 1.',
      formulas: ['r = \\frac{\\sum (x_i - \\bar x)(y_i - \\bar y)}{\\sqrt{\\sum (x_i - \\bar x)^2 \\sum (y_i - \\bar y)^2}}'],
      inputs: [],
      steps: others.toSorted((one, other) => Math.abs(Number(other.value)) - Math.abs(Number(one.value))),
      source: `${SOURCE} (common knowledge)`,
    },
  ]
}
