/** Lays a drawing over the one before it and touches only what differs, so that a drawing follows a moving hand without being made anew. */
import type { Shape } from '../../report/index.ts'

const SVG = 'http://www.w3.org/2000/svg'

/** A drawing as it stands on the page. */
export interface Laid {
  readonly shape: Shape
  readonly node: SVGElement
}

/**
 * @param before what stands on the page; absent where nothing does
 * @returns what stands there now; its node is another one only where the two drawings are different elements
 */
export function layOver(before: Laid | undefined, shape: Shape): Laid {
  if (before?.shape === shape) return before
  if (before?.shape.name !== shape.name) return { shape, node: made(shape) }
  const { node } = before
  layAttributes(node, { before: before.shape.attributes, after: shape.attributes })
  if (shape.words !== before.shape.words) node.textContent = shape.words ?? ''
  layChildren(node, { before: before.shape.children, after: shape.children })
  return { shape, node }
}

function made(shape: Shape): SVGElement {
  const node = document.createElementNS(SVG, shape.name)
  layAttributes(node, { before: {}, after: shape.attributes })
  if (shape.words !== undefined) node.textContent = shape.words
  node.append(...shape.children.map(made))
  return node
}

interface Attributes {
  readonly before: Shape['attributes']
  readonly after: Shape['attributes']
}

/** A drawing's own namespace is that of its elements, and no attribute. */
function layAttributes(node: SVGElement, { before, after }: Attributes): void {
  for (const key in after) if (after[key] !== before[key] && key !== 'xmlns') node.setAttribute(key, after[key])
  for (const key in before) if (!(key in after)) node.removeAttribute(key)
}

/** Children are compared in their order; what is too many is taken off the end. */
function layChildren(parent: SVGElement, { before, after }: { before: readonly Shape[]; after: readonly Shape[] }): void {
  if (before.length === 0 && after.length === 0) return
  const nodes = [...parent.children] as SVGElement[]
  for (const [index, shape] of after.entries()) {
    const old = nodes[index]
    const { node } = layOver(old && { shape: before[index], node: old }, shape)
    if (old === undefined) parent.append(node)
    else if (old !== node) old.replaceWith(node)
  }
  for (const left of nodes.slice(after.length)) left.remove()
}
