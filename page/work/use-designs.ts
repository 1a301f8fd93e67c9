/** The design on the page: where it came from, its text, its evaluation, and what was refused. */
import { useCallback, useEffect, useRef, useState } from 'react'
import type { Evaluation, Problem } from '../../engine/index.ts'
import { type Evaluator, startEvaluator } from './evaluator.ts'
import type { Request } from './messages.ts'

/** A file that could not be shown; the design before it stays. */
export interface Refused {
  readonly name: string
  readonly problems: readonly Problem[]
}

/** What the page shows of a design. */
export interface Shown {
  readonly name: string
  /** As it is in the file. */
  readonly fileText: string
  /** As it stands after pins were dragged. */
  readonly text: string
  readonly evaluation: Evaluation
}

/** The page's design with everything that changes it. */
export interface Designs {
  readonly names: readonly string[]
  readonly shown?: Shown
  /** The last evaluation that could be moved: it is drawn while an edit cannot close. */
  readonly drawn?: Evaluation
  readonly refused?: Refused
  readonly unreachable?: string
  readonly openNamed: (name: string) => void
  readonly openFile: (file: File) => void
  readonly change: (text: string) => void
  readonly dismissRefused: () => void
}

type Asked = Omit<Request, 'id'>

/** Loads the list of designs that the server was given, opens the first, and answers every change. */
export function useDesigns(): Designs {
  const [names, setNames] = useState<readonly string[]>([])
  const [shown, setShown] = useState<Shown>()
  const [drawn, setDrawn] = useState<Evaluation>()
  const [refused, setRefused] = useState<Refused>()
  const [unreachable, setUnreachable] = useState<string>()
  const asked = useRef<Asked>(undefined)
  const evaluator = useRef<Evaluator>(undefined)

  useEffect(() => {
    const started = startEvaluator((answer, { name, fileText, text }) => {
      // An answer about a file that was left in the meantime comes too late.
      if (asked.current?.fileText !== fileText) return
      if (answer.problems !== undefined) {
        setRefused({ name, problems: answer.problems })
        return
      }
      setRefused(undefined)
      setShown({ name, fileText, text, evaluation: answer.evaluation })
      if (answer.evaluation.travel !== undefined) setDrawn(answer.evaluation)
    })
    evaluator.current = started
    return () => started.close()
  }, [])

  const ask = useCallback((question: Asked) => {
    asked.current = question
    evaluator.current?.ask(question)
  }, [])
  const openNamed = useCallback(
    (name: string) => {
      fetchText(`/api/designs/${encodeURIComponent(name)}`)
        .then((text) => ask({ name, fileText: text, text }))
        .catch((reason: unknown) => setUnreachable(String(reason)))
    },
    [ask],
  )
  const openFile = useCallback(
    (file: File) => {
      file
        .text()
        .then((text) => ask({ name: file.name.replace(/\.json$/i, ''), fileText: text, text }))
        .catch((reason: unknown) => setRefused({ name: file.name, problems: [unreadable(reason)] }))
    },
    [ask],
  )
  const change = useCallback(
    (text: string) => shown !== undefined && ask({ name: shown.name, fileText: shown.fileText, text }),
    [ask, shown],
  )

  useEffect(() => {
    fetchText('/api/designs')
      .then((text) => {
        const listed = namesIn(text)
        setNames(listed)
        if (listed[0] !== undefined) openNamed(listed[0])
      })
      .catch((reason: unknown) => setUnreachable(String(reason)))
  }, [openNamed])

  const dismissRefused = useCallback(() => setRefused(undefined), [])
  return {
    names,
    openNamed,
    openFile,
    change,
    dismissRefused,
    ...(shown === undefined ? {} : { shown }),
    ...(drawn === undefined ? {} : { drawn }),
    ...(refused === undefined ? {} : { refused }),
    ...(unreachable === undefined ? {} : { unreachable }),
  }
}

async function fetchText(address: string): Promise<string> {
  const response = await fetch(address)
  if (!response.ok) throw new Error(`${address} answers ${response.status}`)
  return response.text()
}

function namesIn(text: string): readonly string[] {
  const { designs } = JSON.parse(text) as { designs: readonly { name: string }[] }
  return designs.map(({ name }) => name)
}

function unreadable(reason: unknown): Problem {
  return { code: 'file cannot be read', place: '', found: String(reason), needed: 'a text file that this browser may read' }
}
