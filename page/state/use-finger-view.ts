import { useCallback, useMemo, useState } from 'react'
import type { Question } from '../../engine/index.ts'
import { firstToGive, type QuestionName, type Told } from '../../report/index.ts'

/** Posture and forces that are shown, and how to ask for others. */
export interface FingerSeen {
  readonly pointed_ratio: number
  readonly asked: Question
  readonly point: (arc_ratio: number) => void
  readonly ask: (question: Question) => void
  /** Both at once, such as where something gives way. */
  readonly show: (place: { readonly arc_ratio: number; readonly question: Question }) => void
}

const RETURN: Question = { kind: 'return' }

/** Closed and letting go until the reader chooses; of Strength what gives first. */
export function useFingerView(question: QuestionName, drawn: Told): FingerSeen {
  const [pointed, point] = useState<number>()
  const [chosen, ask] = useState<Question>()
  const first = useMemo(() => (question === 'strength' ? firstToGive(drawn) : undefined), [question, drawn])
  const asked = chosen ?? first?.question ?? RETURN
  const isKnown = asked.kind === 'return' || drawn.design.loadCases.some(({ id }) => id === asked.loadCase)
  const show = useCallback<FingerSeen['show']>(({ arc_ratio, question: shown }) => {
    point(arc_ratio)
    ask(shown)
  }, [])
  return { pointed_ratio: pointed ?? first?.arc_ratio ?? 1, asked: isKnown ? asked : RETURN, point, ask, show }
}
