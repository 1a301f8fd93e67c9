/** Which page of the notebook is open; it stands in the address, so that the browser's back key works. */
import { useEffect, useState } from 'react'
import { type QuestionName, questions } from '../../report/index.ts'

/** Questions that are answered by work of their own, not by an evaluation. */
export type FurtherPage = 'spread' | 'make' | 'check' | 'prove'

/** A page of the notebook: a question, or the revisions of the design. */
export type OpenPage = QuestionName | FurtherPage | 'revisions'

const PAGES: readonly OpenPage[] = [...questions.map(({ name }) => name), 'spread', 'make', 'check', 'prove', 'revisions']

/** Whether an evaluation answers it. */
export function isQuestion(page: OpenPage): page is QuestionName {
  return questions.some(({ name }) => name === page)
}

/** The open page: Hold unless the address says another. */
export function useOpenPage(): OpenPage {
  const [page, setPage] = useState(pageInAddress)
  useEffect(() => {
    const follow = (): void => setPage(pageInAddress())
    addEventListener('hashchange', follow)
    return () => removeEventListener('hashchange', follow)
  }, [])
  return page
}

function pageInAddress(): OpenPage {
  return PAGES.find((page) => location.hash === `#${page}`) ?? 'hold'
}
