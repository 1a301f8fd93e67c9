import { useEffect, useRef, useState } from 'react'
import { type Evaluator, startEvaluator } from '../state/evaluator.ts'
import type { Answer } from '../state/messages.ts'

/** What the engine of today says of a text; absent while it is worked out. */
export function useJudged(name: string, text: string | undefined): Answer | undefined {
  const evaluator = useRef<Evaluator>(undefined)
  const [judged, setJudged] = useState<{ readonly text: string; readonly answer: Answer }>()
  useEffect(() => {
    const started = startEvaluator((answer, request) => setJudged({ text: request.text, answer }))
    evaluator.current = started
    return () => started.close()
  }, [])
  useEffect(() => {
    if (text !== undefined) evaluator.current?.ask({ name, opening: 0, text })
  }, [name, text])
  return judged?.text === text ? judged?.answer : undefined
}
