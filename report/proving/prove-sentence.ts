/** The answer to Prove in one plain sentence: what is shown, what is open, which risks are not taken. */
import type { Proof, Verdict } from '../../engine/index.ts'
import { asSentence } from '../sentences/words.ts'

/** What Prove asks. */
export const proveAsks = 'Can you stand behind it: what is asked, what may go wrong, what is shown?'

/** One sentence. */
export function proveSentence({ trace, risks, unforeseen }: Proof): string {
  if (trace.length === 0 && risks.length === 0)
    return 'The design asks for nothing and names no risk, so that there is nothing to stand behind; begin with the starter sets and review them.'
  const back = unforeseen.length
  const unnamed =
    back === 0 ? '' : `; ${back} of what came back from the field ${back === 1 ? 'belongs' : 'belong'} to no risk that is named`
  return asSentence(`${traceWords(trace)}; ${riskWords(risks)}${unnamed}`)
}

/** `3 not shown, 1 risk open`, for a list of questions. */
export function proveWords({ trace, risks }: Proof): string {
  const open = trace.length - count(trace, 'met')
  const left = risks.length - count(risks, 'met')
  const shown = open === 0 ? 'Everything asked is shown' : `${open} of ${trace.length} not shown`
  if (risks.length === 0) return `${shown}; no risks named`
  return `${shown}; ${left === 0 ? 'every risk is taken' : `${left} of ${risks.length} risks not taken`}`
}

type Judged = readonly { readonly verdict: Verdict }[]

function count(things: Judged, verdict: Verdict): number {
  return things.filter((thing) => thing.verdict === verdict).length
}

function traceWords(trace: Judged): string {
  if (trace.length === 0) return 'nothing is asked of the finger'
  const [short, open] = [count(trace, 'short'), count(trace, 'undecided')]
  if (short + open === 0) return `all ${trace.length} things asked are shown`
  const rest = [
    ...(short > 0 ? [`${short} ${short === 1 ? 'falls' : 'fall'} short`] : []),
    ...(open > 0 ? [`${open} ${open === 1 ? 'is' : 'are'} still open`] : []),
  ]
  return `of ${trace.length} things asked ${count(trace, 'met')} are shown, ${rest.join(' and ')}`
}

function riskWords(risks: Judged): string {
  if (risks.length === 0) return 'no risk is named, which is no proof that there is none'
  const [short, open] = [count(risks, 'short'), count(risks, 'undecided')]
  if (short + open === 0) return `what is left of all ${risks.length} risks is within what the workshop takes`
  const rest = [
    ...(short > 0 ? [`${short} ${short === 1 ? 'is' : 'are'} more than the workshop takes`] : []),
    ...(open > 0 ? [`${open} cannot be judged yet`] : []),
  ]
  return `of ${risks.length} risks ${rest.join(' and ')}`
}
