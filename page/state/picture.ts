/** What is drawn of an evaluation at a place of its travel: the posture, and the forces there when somebody asks for them. */
import { type Evaluation, type ForcePicture, forcesAt, type Posture, postureAt, type Question } from '../../engine/index.ts'
import { travelEnd } from '../../report/index.ts'
import { sharedState } from './shared-state.ts'

/** Where the pointer stands on the scale, which may be beyond the end of a travel, and what the forces are asked for. */
export interface Pictured {
  readonly pointed_ratio: number
  readonly question?: Question
}

/** A posture of a travel, with or without forces. */
export interface Picture {
  readonly asked: Pictured
  readonly posture: Posture
  readonly forces?: ForcePicture
}

/** What is drawn now: whoever evaluates works it out with the evaluation, because following the travel again takes longer. */
export const picturedNow = sharedState<Pictured>({ pointed_ratio: 1 })

/** @returns absent for a finger that cannot be moved */
export function pictureOf(evaluation: Evaluation, asked: Pictured): Picture | undefined {
  if (evaluation.travel === undefined) return undefined
  const arc_ratio = Math.min(asked.pointed_ratio, travelEnd(evaluation.travel))
  const posture = postureAt(evaluation, arc_ratio)
  return { asked, posture, ...(asked.question && { forces: forcesAt(evaluation, arc_ratio, asked.question) }) }
}

/** Whether a picture shows what is asked for. */
export function shows({ asked }: Picture, { pointed_ratio, question }: Pictured): boolean {
  return asked.pointed_ratio === pointed_ratio && JSON.stringify(asked.question) === JSON.stringify(question)
}
