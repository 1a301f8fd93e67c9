/** Which page of the notebook is open; it stands in the address, so that the browser's back key works. */
import { useEffect, useState } from 'react'
import { type QuestionName, questions } from '../../report/index.ts'

/** A page of the notebook: a question that an evaluation answers, Make, or the revisions of the design. */
export type OpenPage = QuestionName | 'make' | 'revisions'

const PAGES: readonly OpenPage[] = [...questions.map(({ name }) => name), 'make', 'revisions']

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
