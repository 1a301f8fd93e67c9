import { type RefObject, useLayoutEffect, useRef } from 'react'

/**
 * Knows how tall an element has been, as its custom property `--tallest`, so that what stands below it need not jump while its words change under a moving hand.
 *
 * @param key what it is tall for; with another one it begins anew
 */
export function useTallest<E extends HTMLElement>(key: string): RefObject<E | null> {
  const element = useRef<E>(null)
  useLayoutEffect(() => {
    const watched = element.current
    if (watched === null || key === '') return
    let tallest_px = 0
    const keep = (height_px: number): void => {
      tallest_px = height_px
      watched.style.setProperty('--tallest', `${tallest_px}px`)
    }
    const observer = new ResizeObserver(() => {
      if (watched.offsetHeight > tallest_px) keep(watched.offsetHeight)
    })
    const again = (): void => keep(0)
    observer.observe(watched)
    addEventListener('resize', again)
    return () => {
      observer.disconnect()
      removeEventListener('resize', again)
      again()
    }
  }, [key])
  return element
}
