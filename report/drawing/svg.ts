/**
 * A drawing as data, and SVG text made of it. Files and reports are written from the text; a page lays a drawing over the one before and
 * touches only what differs. Everything that came from a file is escaped here, and nowhere else.
 */

/** Value of an attribute; numbers are written with two decimals, `undefined` leaves the attribute out. */
export type Attribute = string | number | undefined

/** A place on the sheet, in px, y down. */
export interface Place {
  readonly x: number
  readonly y: number
}

/** An element of a drawing, its attributes as they are written but not yet escaped. */
export interface Shape {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: readonly Shape[]
  /** Lettering; what has children has none. */
  readonly words?: string
}

/** One element with its attributes and children. */
export function element(
  name: string,
  attributes: Readonly<Record<string, Attribute>>,
  ...children: readonly (Shape | readonly Shape[])[]
): Shape {
  const written: Record<string, string> = {}
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined) written[key] = typeof value === 'number' ? px(value) : value
  }
  return { name, attributes: written, children: children.flat() }
}

/** A line of text at a place. */
export function lettering(words: string, place: Place, attributes: Readonly<Record<string, Attribute>> = {}): Shape {
  return { ...element('text', { x: place.x, y: place.y, ...attributes }), words }
}

/** A straight line. */
export function line(from: Place, to: Place, className: string): Shape {
  return element('line', { x1: from.x, y1: from.y, x2: to.x, y2: to.y, class: className })
}

/** A path through places, closed or open. */
export function pathThrough(places: readonly Place[], closed: boolean): string {
  const steps = places.map((place, index) => `${index === 0 ? 'M' : 'L'}${px(place.x)} ${px(place.y)}`)
  return `${steps.join('')}${closed ? 'Z' : ''}`
}

/** px with at most two decimals. */
export function px(value: number): string {
  return String(Math.round(value * 100) / 100)
}

/** The text of a drawing. */
export function svgText({ name, attributes, children, words = '' }: Shape): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`)
  const inside = escaped(words) + children.map(svgText).join('')
  return inside === '' ? `<${name}${written.join('')}/>` : `<${name}${written.join('')}>${inside}</${name}>`
}

/** Text that is fit to stand in SVG. */
export function escaped(text: string): string {
  if (!/[&<>"]/.test(text)) return text
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
}
