/** A node of the path prepared for force questions in both senses of motion. */

import type { Mechanism } from '../motion/mechanism.ts'
import type { PathNode } from '../motion/path.ts'
import { type ForceFrame, forceFrame, oppositeFrame } from './force-frame.ts'

export interface FramePair {
  readonly closing: ForceFrame
  readonly opening: ForceFrame
}

/** @returns undefined where the closure equations do not fix the parts */
export function framesAt(mechanism: Mechanism, node: PathNode): FramePair | undefined {
  const closing = forceFrame(mechanism, node.posture, node.tangent)
  return closing && { closing, opening: oppositeFrame(closing) }
}
