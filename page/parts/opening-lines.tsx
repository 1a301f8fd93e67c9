import { useState } from 'react'
import type { OpenedLine } from '../../report/index.ts'
import { Opener } from './opener.tsx'
import { Working } from './working.tsx'

/** Lines of words, one below the other. */
export function OpeningLines({ lines }: { readonly lines: readonly OpenedLine[] }) {
  return lines.map((line) => <OpeningLine key={line.words} line={line} />)
}

/** A line of words that opens how its numbers come about, where it has any. */
function OpeningLine({ line }: { readonly line: OpenedLine }) {
  const { words, workings } = line
  const [isOpen, setOpen] = useState(false)
  const found = workings()
  if (found.length === 0) return <p className="aside">{words}</p>
  return (
    <>
      <div className="aside">
        <Opener words={words} isOpen={isOpen} toggle={() => setOpen(!isOpen)} />
      </div>
      {isOpen ? found.map((working) => <Working key={working.method} working={working} />) : null}
    </>
  )
}
