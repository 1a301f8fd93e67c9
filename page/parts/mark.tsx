import { type Answer, drawMark, marks, svgText } from '../../report/index.ts'

const textOf = (answer: Answer) => ({ __html: svgText(drawMark(answer)) })
const DRAWN: Readonly<Record<Answer, { readonly __html: string }>> = {
  met: textOf('met'),
  short: textOf('short'),
  undecided: textOf('undecided'),
  notAsked: textOf('notAsked'),
}

/** A verdict mark with its word, or with another that says the same of something else. */
export function MarkWithWord({ answer, word = marks[answer].word }: { readonly answer: Answer; readonly word?: string }) {
  return (
    <span className={`verdict verdict-${answer}`}>
      <DrawnMark answer={answer} />
      {word}
    </span>
  )
}

/** The mark alone; its word has to stand nearby. */
export function DrawnMark({ answer }: { readonly answer: Answer }) {
  return <span className="mark-box" dangerouslySetInnerHTML={DRAWN[answer]} />
}
