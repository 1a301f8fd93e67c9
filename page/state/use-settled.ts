import { useEffect, useState } from 'react'

/** What is dragged comes to rest for this long before tables follow. */
const REST_MS = 120

/** A value once it has come to rest: while it changes all the time, the one before that. Keeps slow work out of a drag. */
export function useSettled<T>(value: T): T {
  const [settled, setSettled] = useState(value)
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), REST_MS)
    return () => clearTimeout(timer)
  }, [value])
  return settled
}
