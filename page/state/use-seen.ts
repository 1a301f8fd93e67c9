import { type RefObject, useEffect, useState } from 'react'

/** An element within this distance of the window counts as seen, so that it is up to date when it is scrolled in. */
const NEAR = '200px'

/** Whether any of an element is in the window or near it. */
export function useSeen(element: RefObject<Element | null>): boolean {
  const [isSeen, setSeen] = useState(false)
  useEffect(() => {
    if (element.current === null) return
    const observer = new IntersectionObserver((entries) => setSeen(entries.at(-1)?.isIntersecting === true), { rootMargin: NEAR })
    observer.observe(element.current)
    return () => observer.disconnect()
  }, [element])
  return isSeen
}
