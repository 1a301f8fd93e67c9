import type { RevisionEntry } from '../records/index.ts'
import { marks, overallVerdict } from '../report/index.ts'

/** A moment as a person reads it: day and minute in UTC. */
export function momentText(saved: string): string {
  return `${saved.slice(0, 10)} ${saved.slice(11, 16)} UTC`
}

/** The verdict of a revision as it was kept: mark and word. */
export function verdictText({ verdicts, problems }: RevisionEntry): string {
  if (problems > 0) return '✕ refused'
  const { character, word } = marks[overallVerdict(verdicts.map((verdict) => ({ verdict })))]
  return `${character} ${word}`
}
