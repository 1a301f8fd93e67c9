/** The report of a design, for a prosthetist, a funder or a regulator, as a document to be typeset. */
import type { JsonValue } from '../../engine/index.ts'
import { drawFinger } from '../drawing/draw-finger.ts'
import { printedSvg } from '../drawing/printed-svg.ts'
import { makeSentence } from '../making/make-sentence.ts'
import { questions } from '../questions/questions.ts'
import { caution } from '../sentences/caution.ts'
import { spreadSentence } from '../sentences/spread-sentence.ts'
import { marks } from '../tables/marks.ts'
import { findingsOf, overallVerdict } from '../tables/overall-verdict.ts'
import { findingRows } from '../tables/rows.ts'
import { yieldRows } from '../tables/spread-rows.ts'
import { strengthRows } from '../tables/strength-rows.ts'
import { joined, type ValueText } from '../tables/value-text.ts'
import type { TypesetJob } from '../typeset/typeset-job.ts'
import { wearSentence } from '../wear/wear-sentence.ts'
import { fieldRows, noRisk } from './field-rows.ts'
import { headOf, type KnownOf } from './known-of.ts'
import { localRules, modelLimits } from './model-limits.ts'
import { orientation } from './orientation.ts'
import { proveSentence } from './prove-sentence.ts'
import { riskRows, scaleLines } from './risk-rows.ts'
import { shareWords } from './share-words.ts'
import { sourceLines } from './source-lines.ts'
import { traceRows, traceSays } from './trace-rows.ts'

/** Checks of strength that a report lists: what comes after has far more in hand. */
const STRENGTH_ROWS = 15

/** Everything that is known of a design in one document; the same knowledge gives the same bytes. */
export function reportJob(known: KnownOf): TypesetJob {
  const { evaluation, proof } = known
  const { design } = evaluation
  return {
    template: 'proof-report',
    data: {
      ...headOf('Report', known),
      note: design.note,
      caution,
      answers: answers(known),
      drawings: drawings(known),
      ...figureTables(known),
      trace: traceRows(proof, evaluation.units).map(({ asks, verdict, reason, source, ways }) => ({
        ...{ asks, reason, source, verdict: traceSays[verdict] },
        ways: ways.map((way) => ({ words: way.words, verdict: traceSays[way.verdict] })),
      })),
      risks: riskRows(proof, design).map(({ id: _, verdict: __, ...row }) => ({ ...row })),
      scales: design.riskScales === undefined ? { probability: [], severity: [] } : { ...scaleLines(design.riskScales) },
      tests: testRows(known),
      field: fieldLines(known),
      assumptions: assumptionLines(known),
      limits: modelLimits,
      sources: sourceLines(design),
      orientation: orientation.map((one) => ({ ...one })),
      localRules,
    },
  }
}

function figureTables({ evaluation, spread }: KnownOf) {
  return {
    findings: findingRows(evaluation).map((row) => ({
      title: row.title,
      found: inWords(row.found),
      needed: row.needed,
      margin: inWords(row.margin),
      verdict: marks[row.verdict].word,
      why: row.why ?? '',
    })),
    strength: strengthRows(evaluation)
      .slice(0, STRENGTH_ROWS)
      .map(({ words, margin, says, under }) => ({
        words,
        says,
        margin: inWords(margin),
        under: under === undefined ? '' : `${under.loadCase}, ${under.doing}`,
      })),
    spread: spread === undefined ? [] : yieldRows(spread).map(({ title, met, interval }) => ({ title, met, interval })),
    spreadGround: spread === undefined ? '' : `${spread.asked.samples} sets counted, seed ${spread.asked.seed}.`,
  }
}

function inWords(value: ValueText | undefined): string {
  return value === undefined ? '' : joined(value)
}

function answers({ evaluation, proof, spread, lived }: KnownOf): JsonValue {
  const { design } = evaluation
  const answered = questions.map(({ word, asks, sentence, name }) => ({
    word,
    asks,
    says: sentence(evaluation),
    verdict: marks[overallVerdict(findingsOf(evaluation, name))].word,
  }))
  const life = lived?.life
  return [
    ...answered,
    ...(life === undefined
      ? []
      : [{ word: 'Wear', asks: 'When is it worn out?', says: wearSentence(design, life), verdict: '' }]),
    {
      word: 'Spread',
      asks: 'Will every set behave so?',
      says: spread === undefined ? 'No sets were counted for this report.' : spreadSentence(spread),
      verdict: spread === undefined ? marks.notAsked.word : marks[spread.verdict].word,
    },
    { word: 'Make', asks: 'What is it made of, what does it cost?', says: makeSentence(design), verdict: '' },
    { word: 'Check', asks: 'Did the parts come right?', says: 'No measured set is part of this report.', verdict: '' },
    {
      word: 'Prove',
      asks: 'Can you stand behind it?',
      says: proveSentence(proof),
      verdict: marks[proof.verdict ?? 'notAsked'].word,
    },
  ]
}

function drawings({ evaluation }: KnownOf): JsonValue {
  const places = [
    { title: 'Open', at: 0 },
    { title: 'Closed', at: 1 },
  ]
  return places.flatMap(({ title, at }) => {
    const svg = drawFinger(evaluation, at)
    return svg === undefined ? [] : [{ title, svg: printedSvg(svg) }]
  })
}

function testRows({ evaluation, proof }: KnownOf): JsonValue {
  const ways = proof.trace.flatMap((item) => item.ways)
  return evaluation.design.benchTests.map(({ id, sort, title, passes, done }) => {
    const way = ways.find((one) => one.by === 'test' && one.test.id === id)
    const inBook = way?.by === 'test' && way.inBook !== undefined && way.inBook.tried_count > 0 ? way.inBook : undefined
    const on = inBook?.last ?? done?.on
    const counted = inBook ?? done
    return {
      ...{ sort, title, passes },
      done: counted === undefined ? 'still to be done' : `${on}: ${counted.tried_count} tried, ${counted.failed_count} failed`,
      record: inBook === undefined ? (done?.record ?? '') : `bench book, ${inBook.serials.join(', ')}`,
    }
  })
}

/** Who told it stays with the workshop. */
function fieldLines({ evaluation, proof }: KnownOf): JsonValue {
  return fieldRows(proof.field, evaluation.design).map(({ serial, head, told, found, harm, risks }) => ({
    ...{ serial, head, told, harm, found: found ?? 'not looked at yet' },
    risks: risks.length === 0 ? [noRisk] : risks,
  }))
}

function assumptionLines({ evaluation: { design } }: KnownOf): readonly string[] {
  const { use, factors, generalTolerance } = design
  return [
    use === undefined
      ? 'How often the finger is closed is not stated: nothing is said of wear.'
      : `Closed ${use.closingsPerDay} times a day for ${use.years} years.`,
    factors === undefined
      ? 'Factors on strength: 1.5 on yielding, 2 on breaking, the usual ones; the design states none.'
      : `Factors on strength: ${factors.yield} on yielding, ${factors.ultimate} on breaking. ${factors.reason}`,
    factors?.scatter === undefined
      ? 'How loads and strengths scatter is not stated: what is left of a risk does not take its probability from it.'
      : `Loads scatter by ${shareWords(factors.scatter.load_ratio)}, strengths by ${shareWords(factors.scatter.strength_ratio)} (standard deviations). ${factors.scatter.source}`,
    generalTolerance === undefined
      ? 'Sizes without a tolerance are held as drawn.'
      : `Sizes without a tolerance of their own: ISO 2768-${generalTolerance}.`,
  ]
}
