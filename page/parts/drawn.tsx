import { useLayoutEffect, useRef } from 'react'
import type { Shape } from '../../report/index.ts'
import { type Laid, layOver } from '../state/lay-over.ts'

/** A drawing on the page, or none. Another one in its place changes only what differs. */
export function Drawn({ shape, className }: { readonly shape: Shape | undefined; readonly className?: string | undefined }) {
  const place = useRef<HTMLDivElement>(null)
  const laid = useRef<Laid>(undefined)
  useLayoutEffect(() => {
    const before = laid.current
    laid.current = shape && layOver(before, shape)
    if (laid.current?.node !== before?.node) place.current?.replaceChildren(...(laid.current ? [laid.current.node] : []))
  }, [shape])
  return <div ref={place} className={className} />
}
