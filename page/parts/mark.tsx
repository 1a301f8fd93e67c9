import { type Answer, drawMark, marks } from '../../report/index.ts'

/** A verdict mark with its word. */
export function MarkWithWord({ answer }: { readonly answer: Answer }) {
  return (
    <span className={`verdict verdict-${answer}`}>
      <DrawnMark answer={answer} />
      {marks[answer].word}
    </span>
  )
}

/** The mark alone; its word has to stand nearby. */
export function DrawnMark({ answer }: { readonly answer: Answer }) {
  return <span className="mark-box" dangerouslySetInnerHTML={{ __html: drawMark(answer) }} />
}
