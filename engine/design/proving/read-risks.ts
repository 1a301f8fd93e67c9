import type { Document } from '../document.ts'
import type { Reading } from '../reading.ts'
import type { Risk, RiskScales } from '../sections/proving.ts'
import type { Requirement } from '../sections/use.ts'

/** Both scales; undefined where the document has none. */
export function readRiskScales(reading: Reading): RiskScales | undefined {
  const typed = reading.document.riskScales
  if (typed === undefined) return undefined
  const place = 'riskScales'
  const probability = typed.probability.map((step, index) => ({
    name: reading.line(`${place}.probability.${index}.name`, step.name),
    means: reading.text(`${place}.probability.${index}.means`, step.means),
    upTo_ratio: reading.above0(`${place}.probability.${index}.upTo`, step.upTo, 'number'),
  }))
  reportDoubled(`${place}.probability`, typed.probability, reading)
  reportDoubled(`${place}.severity`, typed.severity, reading)
  reportNotRising(probability, reading)
  const known = probability.map(({ name }) => name)
  const severity = typed.severity.map((step, index) => {
    const at = `${place}.severity.${index}`
    return {
      name: reading.line(`${at}.name`, step.name),
      means: reading.text(`${at}.means`, step.means),
      ...(step.acceptable !== undefined && {
        acceptable: stepOf(`${at}.acceptable`, step.acceptable, { reading, known, what: PROBABILITY }),
      }),
    }
  })
  return { probability, severity }
}

const PROBABILITY = 'a step of riskScales.probability'
const SEVERITY = 'a step of riskScales.severity'

function reportDoubled(place: string, steps: readonly { readonly name: string }[], reading: Reading): void {
  for (const [index, { name }] of steps.entries()) {
    if (steps.findIndex((step) => step.name === name) === index) continue
    reading.report({
      code: 'used twice',
      place: `${place}.${index}.name`,
      found: name,
      needed: 'a name of its own for each step',
    })
  }
}

function reportNotRising(steps: RiskScales['probability'], reading: Reading): void {
  for (const [index, { upTo_ratio }] of steps.entries()) {
    const place = `riskScales.probability.${index}.upTo`
    const found = String(upTo_ratio)
    if (index > 0 && upTo_ratio <= steps[index - 1].upTo_ratio) {
      const needed = `more than the ${steps[index - 1].upTo_ratio} of the step before it`
      reading.report({ code: 'too small', place, found, needed })
    }
    if (index === steps.length - 1 && Number.isFinite(upTo_ratio) && upTo_ratio !== 1) {
      reading.report({ code: 'wrong value', place, found, needed: '100 %: the last step takes everything above the others' })
    }
  }
}

interface Steps {
  readonly reading: Reading
  readonly known: readonly string[]
  readonly what: string
}

function stepOf(place: string, typed: string, { reading, known, what }: Steps): number {
  const index = known.indexOf(typed)
  if (index < 0 && !reading.wasTakenOut('riskScales')) reading.unknownName(place, { typed, what, known })
  return index
}

interface RiskBench {
  readonly reading: Reading
  readonly scales: RiskScales | undefined
  readonly requirements: readonly Requirement[]
}

/** Risks of a document, in its order. Without scales of its own none of them can be judged. */
export function readRisks(bench: RiskBench): readonly Risk[] {
  const { reading, scales } = bench
  const typed = Object.entries(reading.document.risks ?? {})
  if (typed.length > 0 && scales === undefined && !reading.wasTakenOut('riskScales')) {
    const wayOut = 'The starter set of risks comes with scales; review them.'
    reading.report({
      code: 'missing',
      place: 'riskScales',
      found: 'risks without scales',
      needed: 'the scales they are on',
      wayOut,
    })
    return []
  }
  return typed.map(([id, risk]) => readRisk(`risks.${id}`, { id, ...risk }, bench))
}

type TypedRisk = NonNullable<Document['risks']>[string] & { readonly id: string }

function readRisk(place: string, typed: TypedRisk, bench: RiskBench): Risk {
  const { reading, scales } = bench
  const severities = { reading, known: scales?.severity.map(({ name }) => name) ?? [], what: SEVERITY }
  const probabilities = { reading, known: scales?.probability.map(({ name }) => name) ?? [], what: PROBABILITY }
  const text = (key: 'hazard' | 'sequence' | 'harm') => reading.text(`${place}.${key}`, typed[key])
  return {
    id: typed.id,
    hazard: text('hazard'),
    sequence: text('sequence'),
    harm: text('harm'),
    severity: stepOf(`${place}.severity`, typed.severity, severities),
    probability: stepOf(`${place}.probability`, typed.probability, probabilities),
    controls: typed.controls.map((control, index) => ({
      by: control.by,
      does: reading.text(`${place}.controls.${index}.does`, control.does),
      check: reading.text(`${place}.controls.${index}.check`, control.check),
    })),
    residual: readResidual(`${place}.residual`, typed.residual, { ...bench, severities, probabilities }),
  }
}

interface ResidualBench extends RiskBench {
  readonly severities: Steps
  readonly probabilities: Steps
}

function readResidual(place: string, typed: TypedRisk['residual'], bench: ResidualBench): Risk['residual'] {
  const { reading, requirements, severities, probabilities } = bench
  const named = typed.requirements ?? []
  return {
    severity: stepOf(`${place}.severity`, typed.severity, severities),
    ...(typed.probability !== undefined && {
      probability: stepOf(`${place}.probability`, typed.probability, probabilities),
    }),
    requirements: named.map((name, index) => {
      const at = requirements.findIndex(({ id }) => id === name)
      const known = requirements.map(({ id }) => id)
      if (at < 0 && !reading.wasTakenOut(`requirements.${name}`)) {
        reading.unknownName(`${place}.requirements.${index}`, { typed: name, what: 'one of requirements', known })
      }
      return at
    }),
    reason: reading.text(`${place}.reason`, typed.reason),
  }
}
