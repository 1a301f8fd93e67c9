/** The same drawing for a typesetter, which knows no variables of style: each gives way to the colour that stands beside it. */
export function printedSvg(svg: string): string {
  return svg.replace(/var\(--[\w-]+, ([^)]+)\)/g, '$1')
}
