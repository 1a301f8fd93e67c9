import { useEffect, useRef, useState } from 'react'

interface Typed {
  readonly found: string
  readonly y: string
}
const NOTHING: Typed = { found: '', y: '' }

/** Where the bench stands in the plan. */
export type Stand = ReturnType<typeof useStand>

/** Where the bench stands in the plan, and what is typed there. @param begins place of the first characteristic that is open */
export function useStand(begins: number) {
  const [place, setPlace] = useState(begins)
  const [typed, setTyped] = useState(NOTHING)
  const [asked, setAsked] = useState<string>()
  const [gauge, setGauge] = useState('')
  const [visit, setVisit] = useState('finished')
  const first = useRef<HTMLInputElement>(null)
  const second = useRef<HTMLInputElement>(null)
  // Whoever has named the serial number goes on with its first reading.
  useEffect(() => first.current?.focus(), [])
  const goTo = (next: number): void => {
    setPlace(next)
    setTyped(NOTHING)
    setAsked(undefined)
    first.current?.focus()
  }
  return { place, typed, setTyped, asked, setAsked, gauge, setGauge, visit, setVisit, first, second, goTo }
}
