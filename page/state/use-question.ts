/** The question whose page is open; it stands in the address, so that the browser's back key works. */
import { useEffect, useState } from 'react'
import type { QuestionName } from '../../report/index.ts'

/** The open question: Hold unless the address says Motion. */
export function useQuestion(): QuestionName {
  const [question, setQuestion] = useState(questionInAddress)
  useEffect(() => {
    const follow = (): void => setQuestion(questionInAddress())
    addEventListener('hashchange', follow)
    return () => removeEventListener('hashchange', follow)
  }, [])
  return question
}

function questionInAddress(): QuestionName {
  return location.hash === '#motion' ? 'motion' : 'hold'
}
