/** SVG as text. Everything that came from a file is escaped here, and nowhere else. */

/** Value of an attribute; numbers are written with two decimals, `undefined` leaves the attribute out. */
export type Attribute = string | number | undefined

/** A place on the sheet, in px, y down. */
export interface Place {
  readonly x: number
  readonly y: number
}

/** One element with its attributes and children (already SVG text). */
export function element(name: string, attributes: Readonly<Record<string, Attribute>>, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? px(value) : escaped(String(value))}"`)
    .join('')
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`
}

/** A line of text at a place. */
export function lettering(words: string, place: Place, attributes: Readonly<Record<string, Attribute>> = {}): string {
  return element('text', { x: place.x, y: place.y, ...attributes }, escaped(words))
}

/** A straight line. */
export function line(from: Place, to: Place, className: string): string {
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

/** Text that is fit to stand in SVG. */
export function escaped(text: string): string {
  if (!/[&<>"]/.test(text)) return text
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
}
