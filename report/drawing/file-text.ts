/** A drawing as a file that needs no other: its style stands right behind the opening tag. */
import { drawingStyle } from './drawing-style.ts'
import { element, type Shape, svgText } from './svg.ts'

/** @param under what lies under the drawing, such as paper */
export function fileText(svg: Shape, under: readonly Shape[] = []): string {
  const style = { ...element('style', {}), words: drawingStyle }
  return `${svgText({ ...svg, children: [style, ...under, ...svg.children] })}\n`
}
