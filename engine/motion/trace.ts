/**
 * A march along the path that watches functions of the posture and stops at, or notes, the places where they cross zero.
 *
 * Every crossing is bracketed in its own function along the arc and closed to 1e-12 of the scale, so an event stands at its
 * place to better than 1e-9 rad whatever the step was.
 */
import { limits } from '../numbers/limits.ts'
import { rootBetween } from '../numbers/root.ts'
import { dot } from '../numbers/row.ts'
import { march, marchLength, type PathBench, type PathNode, postureAhead, tangentAt } from './path.ts'

export interface Watch {
  readonly id: string
  /** Watched value at a node. */
  readonly value: (node: PathNode) => number
  /** Which crossing counts. */
  readonly crossing: 'falling' | 'rising' | 'either'
  /** Ends the trace there, or is noted only. */
  readonly ends: boolean
}

export interface Crossing {
  readonly watch: Watch
  readonly node: PathNode
}

export interface Trace {
  /** From the start to the end, one a marched step; the last is the end itself. */
  readonly nodes: readonly PathNode[]
  /** In order of arc. */
  readonly crossings: readonly Crossing[]
  readonly endedBy: Watch | 'cannot go on' | 'too long'
}

/** Follows the path from a node in the sense of its tangent. */
export function trace(bench: PathBench, start: PathNode, watches: readonly Watch[]): Trace {
  const nodes = [start]
  const crossings: Crossing[] = []
  let values = watches.map((watch) => watch.value(start))
  let lastStep_mm = Number.POSITIVE_INFINITY
  for (let step = 0; step < limits.marchSteps; step++) {
    const last = nodes[nodes.length - 1]
    // Where the path has just bent it bends on: a step is at most twice the last one.
    const next = march(bench, last, Math.min(marchLength(bench.mechanism, last.tangent), 2 * lastStep_mm))
    if (!next) return { nodes, crossings, endedBy: 'cannot go on' }
    lastStep_mm = next.arc_mm - last.arc_mm
    const nextValues = watches.map((watch) => watch.value(next))
    const found = crossingsBetween(bench, { last, next, watches, values, nextValues })
    const ending = found.find((crossing) => crossing.watch.ends)
    for (const crossing of found) if (!ending || crossing.node.arc_mm <= ending.node.arc_mm) crossings.push(crossing)
    if (ending) {
      nodes.push(ending.node)
      return { nodes, crossings, endedBy: ending.watch }
    }
    nodes.push(next)
    values = nextValues
  }
  return { nodes, crossings, endedBy: 'too long' }
}

interface Step {
  readonly last: PathNode
  readonly next: PathNode
  readonly watches: readonly Watch[]
  readonly values: readonly number[]
  readonly nextValues: readonly number[]
}

function crossingsBetween(bench: PathBench, step: Step): Crossing[] {
  const found: Crossing[] = []
  step.watches.forEach((watch, index) => {
    if (!crosses(watch, step.values[index], step.nextValues[index])) return
    const last = { node: step.last, value: step.values[index] }
    const next = { node: step.next, value: step.nextValues[index] }
    const node = nodeWhereZero(bench, last, next, watch.value)
    if (node) found.push({ watch, node })
  })
  return found.sort((a, b) => a.node.arc_mm - b.node.arc_mm)
}

function crosses(watch: Watch, before: number, after: number): boolean {
  const falling = before > 0 && after <= 0
  const rising = before < 0 && after >= 0
  return watch.crossing === 'either' ? falling || rising : watch.crossing === 'falling' ? falling : rising
}

/** A node with the value of a function there. */
export interface ValuedNode {
  readonly node: PathNode
  readonly value: number | undefined
}

/** The node between two neighbours where a function of the node is zero; its values at both are known. */
export function nodeWhereZero(
  bench: PathBench,
  from: ValuedNode,
  to: ValuedNode,
  value: (node: PathNode) => number | undefined,
): PathNode | undefined {
  const at = (step: number): number | undefined => {
    const node = nodeAhead(bench, from.node, step)
    return node && value(node)
  }
  const high = to.node.arc_mm - from.node.arc_mm
  const { value: atLow } = from
  const { value: atHigh } = to
  if (atLow === undefined || atHigh === undefined) return undefined
  const step = rootBetween(at, { low: 0, high, atLow, atHigh }, limits.eventWidth_ratio * bench.mechanism.scale_mm)
  return step === undefined ? undefined : nodeAhead(bench, from.node, step)
}

/** A whole node (posture and tangent) a short way ahead of another. */
export function nodeAhead(bench: PathBench, from: PathNode, step_mm: number): PathNode | undefined {
  const ahead = postureAhead(bench, from, step_mm)
  if (!ahead) return undefined
  const tangent = tangentAt(bench, ahead.posture, from.tangent)
  if (!tangent || dot(tangent, from.tangent) <= 0) return undefined
  return { posture: ahead.posture, tangent, arc_mm: from.arc_mm + step_mm }
}

/** The node at an arc of a trace, mm; beyond its ends the nearest end is extended by one step at most. */
export function nodeAt(bench: PathBench, nodes: readonly PathNode[], arc_mm: number): PathNode | undefined {
  let low = 0
  let high = nodes.length - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (nodes[middle].arc_mm <= arc_mm) low = middle
    else high = middle
  }
  const base = nodes.length > 1 && arc_mm >= nodes[high].arc_mm ? nodes[high] : nodes[low]
  return arc_mm === base.arc_mm ? base : nodeAhead(bench, base, arc_mm - base.arc_mm)
}
