import type { Problem } from '../problem.ts'
import { readDesign } from '../read-design.ts'
import type { Desk } from './desk.ts'

/** Problems that a changed document has and the one on the desk has not. */
export function newProblems(desk: Desk, changed: string): readonly Problem[] {
  return (readDesign(changed).problems ?? []).filter((problem) => isNew(problem, desk))
}

/** Whether the document on the desk has not got this problem. Lines move with every edit and do not count. */
export function isNew({ code, place, found }: Problem, { problems }: Desk): boolean {
  return !problems.some((had) => had.code === code && had.place === place && had.found === found)
}
