import { type Design, workingsOf } from '../../engine/index.ts'
import { Working } from './working.tsx'

/** How a figure of a design comes about: worked out when somebody opens it, and kept for the next one of the same design. */
export function FigureWorking({ design, figure }: { readonly design: Design; readonly figure: string }) {
  const working = workingsOf(design).get(figure)
  return working === undefined ? null : <Working working={working} />
}
