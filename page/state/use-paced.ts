import { useLayoutEffect, useRef, useState } from 'react'

/** Words and numbers that change more often than this cannot be read. */
const PACE_MS = 100

/**
 * A value as it is while it changes now and then, and ten times a second while it changes all the time: for words beside what is dragged,
 * which cost the time that the drawing needs. The last value of a row of changes always comes.
 */
export function usePaced<T>(value: T): T {
  const [paced, setPaced] = useState(value)
  const taken_ms = useRef(Number.NEGATIVE_INFINITY)
  useLayoutEffect(() => {
    const take = (): void => {
      taken_ms.current = performance.now()
      setPaced(value)
    }
    const wait_ms = taken_ms.current + PACE_MS - performance.now()
    if (wait_ms <= 0) return take()
    const timer = setTimeout(take, wait_ms)
    return () => clearTimeout(timer)
  }, [value])
  return paced
}
