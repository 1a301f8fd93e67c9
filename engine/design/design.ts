/**
 * The design document as a type: everything read, resolved and in inside units (mm, N, N·mm, MPa, rad, kg).
 *
 * Frame: x towards the fingertip with the finger straight, y towards the back of the hand, angles counter-clockwise.
 * Flexion is clockwise and is stored positive. References between things are indices into the arrays of this object,
 * so that nothing has to be looked up by name again.
 */

import type { Screw } from './screws/screw.ts'
import type { Drive } from './sections/drive.ts'
import type { GreasePoint } from './sections/grease.ts'
import type { Pin, Stop, Toggle } from './sections/joints.ts'
import type { LoadCase, Port } from './sections/loads.ts'
import type { BoughtItem, Making, Order } from './sections/making.ts'
import type { Part } from './sections/parts.ts'
import type { BenchTest, Demand, Risk, RiskScales } from './sections/proving.ts'
import type { Dimension, VariationRules } from './sections/sizes.ts'
import type { Spring } from './sections/springs.ts'
import type { FrictionPair } from './sections/surface-pairs.ts'
import type { Factors, Member, Requirement, Use } from './sections/use.ts'

export type * from './sections/drive.ts'
export type * from './sections/grease.ts'
export type * from './sections/joints.ts'
export type * from './sections/loads.ts'
export type * from './sections/making.ts'
export type * from './sections/materials.ts'
export type * from './sections/parts.ts'
export type * from './sections/proving.ts'
export type * from './sections/sizes.ts'
export type * from './sections/springs.ts'
export type * from './sections/surface-pairs.ts'
export type * from './sections/surfaces.ts'
export type * from './sections/use.ts'

export interface Design {
  readonly name: string
  readonly title: string
  readonly note: string
  /** Class of ISO 2768-1 for lengths without a tolerance of their own; absent: they are held at their nominal. */
  readonly generalTolerance?: 'f' | 'm' | 'c' | 'v'
  /** Absent: nothing is stated. */
  readonly variation?: VariationRules
  readonly dimensions: readonly Dimension[]
  readonly frictionPairs: readonly FrictionPair[]
  /** parts[0] is the mount. */
  readonly parts: readonly Part[]
  readonly pins: readonly Pin[]
  readonly stops: readonly Stop[]
  readonly springs: readonly Spring[]
  readonly drive: Drive
  /** Where and how the wearer forces a finger open that has gone past dead centre. */
  readonly release?: { readonly port: Port; readonly most?: number }
  readonly loadCases: readonly LoadCase[]
  readonly toggles: readonly Toggle[]
  /** Angles of the pull of gravity in the mount frame, counter-clockwise from x; absent: weight is left out. */
  readonly weight?: { readonly from_rad: number; readonly to_rad: number }
  /** Absent when not stated. */
  readonly use?: Use
  /** Absent when none are stated. */
  readonly screws?: readonly Screw[]
  /** Where the bench greases; absent when not stated. */
  readonly grease?: readonly GreasePoint[]
  /** What is to give way under too much load, the first first; absent when not stated. */
  readonly givesWay?: readonly Member[]
  /** By how much a strength must exceed its stress, yielding and breaking; absent when not stated. */
  readonly factors?: Factors
  /** Place that is watched as the tip of the finger. */
  readonly tip?: { readonly part: number; readonly pad: number }
  readonly requirements: readonly Requirement[]
  readonly orders: readonly Order[]
  readonly bought: readonly BoughtItem[]
  readonly making?: Making
  readonly demands: readonly Demand[]
  readonly benchTests: readonly BenchTest[]
  /** Absent when not stated; then there are no risks. */
  readonly riskScales?: RiskScales
  readonly risks: readonly Risk[]
}
