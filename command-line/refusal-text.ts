import { type Problem, sentence } from '../engine/index.ts'

/** Every problem of a design in one sentence each, after a line that counts them. */
export function refusalText(shown: string, problems: readonly Problem[]): string {
  const count = problems.length === 1 ? 'one problem' : `${problems.length} problems`
  return `${shown} is refused: ${count}.\n${problems.map((problem) => `  ${sentence(shown, problem)}\n`).join('')}`
}
