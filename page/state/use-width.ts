import { type RefObject, useEffect, useRef, useState } from 'react'

/** Inner width of an element in px, followed as the window changes; 0 before it is known. */
export function useWidth<E extends HTMLElement>(): readonly [RefObject<E | null>, number] {
  const element = useRef<E>(null)
  const [width, setWidth] = useState(0)
  useEffect(() => {
    const watched = element.current
    if (watched === null) return
    const observer = new ResizeObserver(([entry]) => setWidth(Math.floor(entry.contentRect.width)))
    observer.observe(watched)
    return () => observer.disconnect()
  }, [])
  return [element, width]
}
