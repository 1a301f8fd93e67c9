import { useCallback, useEffect, useState } from 'react'
import { wordsOf } from '../../state/server-words.ts'

/** Whoever types one reading after the other is not kept waiting by the answers to each. */
const REST_ms = 500

/** What was fetched, or why it could not be; neither while it is asked for. */
export interface Fetched<Value> {
  readonly value?: Value
  readonly fault?: string
  /** Asks anew; what was there stays until the answer comes. */
  readonly again: () => void
}

/** Fetches something when the page needs it. @param key of what is asked for; undefined for nothing. @param ask a stable function */
export function useFetched<Value>(key: string | undefined, ask: () => Promise<Value>): Fetched<Value> {
  const [state, setState] = useState<{ readonly key?: string; readonly value?: Value; readonly fault?: string }>({})
  const [count, setCount] = useState(0)
  const again = useCallback(() => setCount((before) => before + 1), [])
  useEffect(() => {
    let isLate = false
    if (key === undefined) return
    const begin = (): void => {
      ask().then(
        (value) => isLate || setState({ key, value }),
        (reason) => isLate || setState({ key, fault: wordsOf(reason) }),
      )
    }
    const timer = setTimeout(begin, count === 0 ? 0 : REST_ms)
    return () => {
      isLate = true
      clearTimeout(timer)
    }
  }, [key, ask, count])
  const { value, fault } = state.key === key ? state : {}
  return { ...(value !== undefined && { value }), ...(fault !== undefined && { fault }), again }
}
