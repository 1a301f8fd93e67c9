/** What falls short or stays undecided among the requirements, as a clause; absent when all are met or none is stated. */
import type { Finding } from '../../engine/index.ts'
import { governingFinding } from '../tables/overall-verdict.ts'
import type { Told } from '../tables/told.ts'
import { say } from '../tables/value-text.ts'
import { figureName } from './figure-name.ts'

/** `2 of 9 requirements fall short, dead-centre margin by 1.3°`; the governing one is named. */
export function shortfallClause(evaluation: Told, findings: readonly Finding[]): string | undefined {
  const short = findings.filter((finding) => finding.verdict === 'short')
  const undecided = findings.filter((finding) => finding.verdict === 'undecided')
  const governing = governingFinding(findings)
  if (governing === undefined || short.length + undecided.length === 0) return undefined
  const { figure, requirement } = governing
  const name = figureName({ id: requirement.figure, title: figure?.title ?? requirement.figure })
  if (short.length > 0) {
    const verb = short.length === 1 ? 'falls' : 'fall'
    const counted = `${short.length} of ${findings.length} requirements ${verb} short`
    // A yes-or-no that falls short is what the rest of the sentence is about; it is not said twice.
    return governing.margin === undefined ? counted : `${counted}: ${name}${byHowMuch(evaluation, governing)}`
  }
  const verb = undecided.length === 1 ? 'is' : 'are'
  return `${undecided.length} of ${findings.length} requirements ${verb} undecided: ${name}`
}

function byHowMuch(evaluation: Told, finding: Finding): string {
  if (finding.margin === undefined || finding.figure === undefined) return ''
  return ` by ${say(Math.abs(finding.margin), finding.figure.unit, evaluation.units)}`
}
