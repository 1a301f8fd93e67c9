/**
 * What an evaluation says: the travel, the figures and the findings; and what tells how a figure comes about.
 * Everything here is data in inside units (mm, N, N·mm, rad); the doors turn it into words, tables and drawings.
 */
import type { Design, Point, Requirement } from '../design/design.ts'
import type { FigureUnit } from '../design/figure-names.ts'
import type { Problem } from '../design/problem.ts'
import type { Vector } from '../numbers/vector.ts'

export type { FigureUnit } from '../design/figure-names.ts'

/** Formula, inputs, intermediate values and source of one figure. */
export interface Working {
  /** The idea in a sentence or two. */
  readonly method: string
  /** TeX, one line each. */
  readonly formulas: readonly string[]
  readonly inputs: readonly WorkingValue[]
  readonly steps: readonly WorkingValue[]
  readonly source: string
}

export interface WorkingValue {
  readonly name: string
  readonly value: number | boolean | string
  readonly unit: FigureUnit
  /** Digits that count where three are too few: two measured sizes often share four. */
  readonly digits?: number
  /** Place in the document or figure that it comes from, when it has one. */
  readonly from?: string
}

export interface Figure {
  readonly id: string
  /** In words, e.g. `Dead-centre margin of toggle distal, closed`. */
  readonly title: string
  /** Absent when it does not exist; then `why` says so in words. */
  readonly value?: number | boolean | string
  readonly unit: FigureUnit
  readonly why?: string
  /** Without a value, but known to lie above or below any bound: an effort that no force can give, a jam that never comes. */
  readonly beyond?: 'above any' | 'below any'
  /** Without a value, but known to be no more than this. */
  readonly noMoreThan?: number
}

export type Verdict = 'met' | 'short' | 'undecided'

export interface Finding {
  readonly requirement: Requirement
  readonly figure?: Figure
  readonly verdict: Verdict
  /** In the figure's unit; positive when met. Absent for yes or no, and when undecided. */
  readonly margin?: number
  /** Why it is undecided or short, in words. */
  readonly why?: string
}

export type TravelEventKind = 'open' | 'closed' | 'stop' | 'fold' | 'deadCentre' | 'jam' | 'runJam' | 'slip' | 'worstReturn'

export interface TravelEvent {
  readonly kind: TravelEventKind
  /** Share of the travel's arc, 0 open to 1 closed; above 1 beyond the stop. */
  readonly arc_ratio: number
  /** Drive coordinate there: rad or mm. */
  readonly drive: number
  readonly words: string
}

export interface Posture {
  /** Share of the arc of the travel: 0 open, 1 closed. */
  readonly arc_ratio: number
  readonly drive: number
  /** Three numbers a part in part order: x_mm, y_mm, turn_rad (counter-clockwise) in the mount frame. */
  readonly poses: Float64Array
  /** Centre of each pin in the mount frame. */
  readonly pinsAt: readonly Point[]
  /** One per toggle. */
  readonly margins_rad: readonly number[]
}

/** Two parts that run into each other on the travel. */
export interface Overlapping {
  /** Part indices, ascending. */
  readonly parts: readonly [number, number]
  /** Where they first meet, and where they reach deepest into each other; as Posture.arc_ratio. */
  readonly first_ratio: number
  readonly deepest_ratio: number
  /** Drive coordinates there: rad or mm. */
  readonly firstDrive: number
  readonly deepestDrive: number
  /** At the deepest posture: how far the boundary of one reaches inside the other, and where in the mount frame. */
  readonly depth_mm: number
  readonly at: Point
}

/** One quantity over the travel, one value a posture; undefined where it does not exist. */
export interface Series {
  readonly id: string
  readonly title: string
  readonly unit: FigureUnit
  readonly values: readonly (number | undefined)[]
}

export interface Travel {
  readonly postures: readonly Posture[]
  /** What ends the closing motion. */
  readonly endsBy: 'stop' | 'range' | 'deadCentre' | 'breaks'
  readonly endWords: string
  readonly driveUnit: 'rad' | 'mm'
  readonly events: readonly TravelEvent[]
  readonly series: readonly Series[]
  /** Pairs of parts that run into each other, deepest first; parts that could not be looked at are named in `motion.collides`. */
  readonly overlaps: readonly Overlapping[]
}

/** Forces at one posture for the drawing. Forces act on `part`; equal and opposite ones on `against`. */
export interface ForcePicture {
  readonly posture: Posture
  readonly title: string
  readonly pins: readonly {
    readonly pin: number
    readonly part: number
    readonly against: number
    readonly at: Point
    readonly force_N: Vector
    /** Radius ρ of the friction circle, mm. */
    readonly frictionCircle_mm: number
  }[]
  /** Line of action of the force in each unloaded two-pin link. */
  readonly linkLines: readonly {
    readonly part: number
    readonly through: Point
    readonly direction_rad: number
    readonly tension_N: number
  }[]
  readonly loads: readonly { readonly at: Point; readonly force_N: Vector; readonly words: string }[]
  readonly stops: readonly DrawnStop[]
  /** Pushes out of the plane; absent where the question has none. */
  readonly sideways?: readonly { readonly at: Point; readonly force_N: number }[]
  /** Effort at the drive, keeper or release port; absent when no equilibrium exists. */
  readonly effort?: { readonly value: number; readonly unit: FigureUnit; readonly words: string }
  readonly why?: string
}

/** The force of a stop as it is drawn. */
export interface DrawnStop {
  readonly stop: number
  readonly at: Point
  readonly force_N: Vector
  /** The largest that friction at rest may leave on it, which its strength is judged by; absent where it is not known. */
  readonly most_N?: number
}

/** What the forces are asked for at a posture: the return by springs alone, or a load case. */
export type Question = { readonly kind: 'return' } | { readonly kind: 'hold' | 'close'; readonly loadCase: string }

/** One check of strength, for the list of what gives first. */
export interface RankedStrength {
  /** Id of its figure. */
  readonly figure: string
  /** What gives way, e.g. `pin dip in bending`. */
  readonly words: string
  readonly margin: number
  /** How it gives way, e.g. `breaks`, and the factor that was asked for. */
  readonly says: string
  readonly factor: number
  /** Where the margin is least; absent where it is no load case's, such as of a stop when open. */
  readonly loadCase?: string
  readonly doing?: 'closing' | 'holding' | 'held closed'
  /** Drive coordinate (rad or mm) and share of the arc of the travel. */
  readonly at?: { readonly drive: number; readonly arc_ratio: number }
  /** Ids of what it is looked at on; a part at a pin has both. */
  readonly pin?: string
  readonly part?: string
  readonly stop?: string
  readonly spring?: string
  readonly screw?: string
}

/** Every check of strength. */
export interface StrengthList {
  /** Those with a margin, the least first. */
  readonly ranked: readonly RankedStrength[]
  /** Those that could not be worked out, each with what is missing. */
  readonly open: readonly { readonly figure: string; readonly words: string; readonly why: string }[]
  /** Why some state of the loads is not known at all; margins may then be less than those that were found. */
  readonly unknown?: string
  /** What the document has to state before strength can be asked at all; empty where it states enough. */
  readonly refused: readonly Problem[]
}

export interface Evaluation {
  readonly design: Design
  readonly mobility: { readonly degrees: number; readonly words: string }
  /** Absent when the finger cannot be assembled; `problems` says why. */
  readonly travel?: Travel
  /** What gives first; absent without a travel. */
  readonly strength?: StrengthList
  readonly figures: readonly Figure[]
  readonly findings: readonly Finding[]
  /** Faults that only show when the finger is moved: it cannot close, it is loose, two stops fight. */
  readonly problems: readonly Problem[]
}
