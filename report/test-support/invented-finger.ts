/**
 * TEST SUPPORT ONLY. A hand-built evaluation of a finger with coupled joints: the positions are solved here by two circles that
 * meet, the figures are invented. It lets sentences, tables and drawings be tried in every state, also those that a real
 * evaluation reaches rarely. Nothing outside tests may import it.
 */
import type { Design, Evaluation, Figure, FigureUnit, Finding, ForcePicture, Pin, Point, Posture } from '../../engine/index.ts'

const RAD = Math.PI / 180
const friction = {
  name: 'invented pair',
  moving: { least: 0.08, likely: 0.12, most: 0.18 },
  rest: { least: 0.1, likely: 0.15, most: 0.2 },
  source: 'invented for tests',
}
const bare = { edges: [], pads: [], outline: [] }
const hole = (id: string, x_mm: number, y_mm: number) => ({ id, at: { x_mm, y_mm }, diameter_mm: 3.02 })
const pad = (id: string, x_mm: number, y_mm: number) => ({ id, at: { x_mm, y_mm } })
const pin = (id: string, first: readonly [number, number], second: readonly [number, number]): Pin => ({
  id,
  joins: [
    { part: first[0], hole: first[1] },
    { part: second[0], hole: second[1] },
  ],
  diameter_mm: 3,
  friction,
  fixedIn: first[0],
  shear: 'double',
  drag_Nmm: 0,
})

/** Six parts, seven pins, a stop, a return spring, three loads. */
export const inventedDesign: Design = {
  name: 'invented',
  title: 'Invented finger for tests',
  note: 'Invented scenario.',
  dimensions: [],
  frictionPairs: [friction],
  parts: [
    { ...bare, id: 'mount', name: 'Mount', role: 'mount', holes: [hole('mcp', 0, 0), hole('link', 6.47, 3.43)] },
    {
      ...bare,
      id: 'proximal',
      name: 'Proximal phalanx',
      role: 'proximal',
      holes: [hole('mcp', 0, 0), hole('pip', 44, 0), hole('link', 45.13, 4.33)],
      pads: [pad('grip', 22, -7)],
    },
    {
      ...bare,
      id: 'middle',
      name: 'Middle phalanx',
      role: 'middle',
      holes: [hole('pip', 0, 0), hole('dip', 26, 0), hole('link', 4, -5.2)],
      pads: [pad('grip', 13, -6)],
      edges: [{ id: 'shelf', kind: 'straight', from: { x_mm: 22, y_mm: -5.5 }, to: { x_mm: 27, y_mm: -2.5 } }],
    },
    {
      ...bare,
      id: 'distal',
      name: 'Distal phalanx',
      role: 'distal',
      holes: [hole('dip', 0, 0), hole('link', -2.27, -5.41)],
      pads: [pad('grip', 14, -5), pad('tip', 22, 0), pad('back', 12, 5)],
    },
    { ...bare, id: 'link1', name: 'Link 1', role: 'link', holes: [hole('near', 0, 0), hole('far', 42.108, 0)] },
    { ...bare, id: 'link2', name: 'Link 2', role: 'link', holes: [hole('near', 0, 0), hole('far', 24.507, 0)] },
  ],
  pins: [
    pin('mcp', [0, 0], [1, 0]),
    pin('pip', [1, 1], [2, 0]),
    pin('dip', [2, 1], [3, 0]),
    pin('linkMount', [0, 1], [4, 0]),
    pin('linkMiddle', [2, 2], [4, 1]),
    pin('linkTop', [1, 2], [5, 0]),
    pin('linkTip', [3, 1], [5, 1]),
  ],
  stops: [
    {
      id: 'closed',
      round: { part: 5, at: { x_mm: 24.507, y_mm: 0 }, radius_mm: 1.5 },
      against: { part: 2, edge: 0 },
      friction,
      gap_mm: 0,
    },
  ],
  springs: [
    { id: 'return', kind: 'torsion', pin: 0, on: 1, against: 0, rate_Nmm_rad: 50, preload_Nmm: 60, ownFriction_ratio: 0.05 },
  ],
  drive: { kind: 'turn', part: 1, against: 0, pin: 0, travel: { open: 0, closed: 80 * RAD, effortMost: 1500 } },
  loadCases: [
    loadCase('hook', 'Hook load', { part: 2, pad: 0, direction_rad: Math.PI / 2, frame: 2, force_N: 60 }),
    loadCase('pinch', 'Fingertip pinch', { part: 3, pad: 0, direction_rad: Math.PI / 2, frame: 3, force_N: 15 }),
    loadCase('back', 'Push on the back of the distal', { part: 3, pad: 2, direction_rad: -Math.PI / 2, frame: 3, force_N: 40 }),
  ],
  toggles: [{ id: 'distal', a: 5, b: 6, c: 2, folded: false }],
  tip: { part: 3, pad: 1 },
  requirements: [],
  orders: [],
  bought: [],
  demands: [],
  benchTests: [],
  risks: [],
}

function loadCase(id: string, name: string, force: Design['loadCases'][number]['forces'][number]): Design['loadCases'][number] {
  return { id, name, forces: [force], couples: [], acts: 'closed', sideways: [] }
}

/** A figure with a name for its title. */
export function inventedFigure(id: string, value: number | boolean | string | undefined, unit: FigureUnit, why?: string): Figure {
  return { id, title: id, unit, ...(value === undefined ? {} : { value }), ...(why === undefined ? {} : { why }) }
}

/** Figures of a finger that holds by the stop and lets go; entries given replace those of the same id. */
export function inventedFigures(...replacements: readonly Figure[]): readonly Figure[] {
  const standard = [
    inventedFigure('closed.drive', 75 * RAD, 'rad'),
    inventedFigure('motion.closes', true, 'yes or no'),
    inventedFigure('closed.joint.mcp.flexion', 75 * RAD, 'rad'),
    inventedFigure('closed.joint.pip.flexion', 88.2 * RAD, 'rad'),
    inventedFigure('closed.joint.dip.flexion', 62.6 * RAD, 'rad'),
    inventedFigure('closed.toggle.distal.deadCentreMargin', 8.7179 * RAD, 'rad'),
    inventedFigure('closed.toggle.distal.jamAngle', 5.1 * RAD, 'rad'),
    inventedFigure('return.letsGo', true, 'yes or no'),
    inventedFigure('return.reserveFromRest', 14.2, 'N·mm per pin'),
    inventedFigure('return.reserveMoving', 21.6, 'N·mm per pin'),
    inventedFigure('return.worstAt', 75 * RAD, 'rad'),
    inventedFigure('loadCase.hook.heldBy', 'wearer', 'words'),
    inventedFigure('loadCase.hook.effortToHold', 2140, 'N·mm'),
    inventedFigure('loadCase.pinch.heldBy', 'wearer', 'words'),
    inventedFigure('loadCase.pinch.effortToHold', 610, 'N·mm'),
    inventedFigure('loadCase.back.heldBy', 'stop', 'words'),
  ]
  const replaced = new Set(replacements.map((figure) => figure.id))
  return [...standard.filter((figure) => !replaced.has(figure.id)), ...replacements]
}

/** An evaluation around the invented finger; what is given replaces the standard part. */
export function inventedEvaluation(parts: Partial<Evaluation> = {}): Evaluation {
  return {
    design: inventedDesign,
    mobility: { degrees: 1, words: 'one freedom' },
    travel: inventedTravel,
    figures: inventedFigures(),
    findings: [],
    problems: [],
    ...parts,
  }
}

/** A finding on a dead-centre margin. */
export function inventedFinding(verdict: Finding['verdict'], margin_rad?: number): Finding {
  return {
    requirement: {
      id: 'margin',
      figure: 'closed.toggle.distal.deadCentreMargin',
      bound: { kind: 'atLeast', value: 7 * RAD, unit: 'deg', typed: '7 deg' },
      reason: 'common practice in the trade',
      source: 'SOURCE trade',
    },
    figure: inventedFigure('closed.toggle.distal.deadCentreMargin', 8.7179 * RAD, 'rad'),
    verdict,
    ...(margin_rad === undefined ? {} : { margin: margin_rad }),
  }
}

const moved = (pose: readonly number[], at: Point): Point => {
  const [x, y, turn] = pose as [number, number, number]
  return {
    x_mm: x + at.x_mm * Math.cos(turn) - at.y_mm * Math.sin(turn),
    y_mm: y + at.x_mm * Math.sin(turn) + at.y_mm * Math.cos(turn),
  }
}

function turnToReach(
  parent: { readonly at: Point; readonly near_rad: number },
  reach: { own: Point; target: Point; length_mm: number },
): number {
  const miss = (turn: number): number => {
    const at = moved([parent.at.x_mm, parent.at.y_mm, turn], reach.own)
    return Math.hypot(at.x_mm - reach.target.x_mm, at.y_mm - reach.target.y_mm) - reach.length_mm
  }
  let turn = parent.near_rad
  for (let round = 0; round < 40; round += 1) turn -= miss(turn) / ((miss(turn + 1e-6) - miss(turn - 1e-6)) / 2e-6)
  return turn
}

function linkPose(from: Point, to: Point): number[] {
  return [from.x_mm, from.y_mm, Math.atan2(to.y_mm - from.y_mm, to.x_mm - from.x_mm)]
}

/** The posture for a flexion of the first joint, close to the one before it. */
function postureFor(mcp_rad: number, near: { middle: number; distal: number }): Posture {
  const [mount, proximal, middle, distal] = inventedDesign.parts
  const proximalPose = [0, 0, -mcp_rad]
  const middleAt = moved(proximalPose, proximal.holes[1].at)
  const middleTurn = turnToReach(
    { at: middleAt, near_rad: near.middle },
    { own: middle.holes[2].at, target: mount.holes[1].at, length_mm: 42.108 },
  )
  const middlePose = [middleAt.x_mm, middleAt.y_mm, middleTurn]
  const distalAt = moved(middlePose, middle.holes[1].at)
  const linkTop = moved(proximalPose, proximal.holes[2].at)
  const distalTurn = turnToReach(
    { at: distalAt, near_rad: near.distal },
    { own: distal.holes[1].at, target: linkTop, length_mm: 24.507 },
  )
  const distalPose = [distalAt.x_mm, distalAt.y_mm, distalTurn]
  const linkTip = moved(distalPose, distal.holes[1].at)
  const linkMiddle = moved(middlePose, middle.holes[2].at)
  const poses = [
    [0, 0, 0],
    proximalPose,
    middlePose,
    distalPose,
    linkPose(mount.holes[1].at, linkMiddle),
    linkPose(linkTop, linkTip),
  ]
  const pinsAt = [{ x_mm: 0, y_mm: 0 }, middleAt, distalAt, mount.holes[1].at, linkMiddle, linkTop, linkTip]
  const first = [linkTip.x_mm - linkTop.x_mm, linkTip.y_mm - linkTop.y_mm]
  const second = [distalAt.x_mm - linkTip.x_mm, distalAt.y_mm - linkTip.y_mm]
  const margin = Math.atan2(first[0] * second[1] - first[1] * second[0], first[0] * second[0] + first[1] * second[1])
  return {
    arc_ratio: mcp_rad / (75 * RAD),
    drive: mcp_rad,
    poses: Float64Array.from(poses.flat()),
    pinsAt,
    margins_rad: [Math.abs(margin)],
  }
}

function inventedPostures(): readonly Posture[] {
  const postures: Posture[] = []
  let near = { middle: -4 * RAD, distal: -8 * RAD }
  for (let step = 0; step <= 60; step += 1) {
    const posture = postureFor((75 * RAD * step) / 60, near)
    near = { middle: posture.poses[8], distal: posture.poses[11] }
    postures.push(posture)
  }
  return postures
}

/** 61 postures from straight to the stop. */
export const inventedTravel = travelOf(inventedPostures())

function travelOf(postures: readonly Posture[]): NonNullable<Evaluation['travel']> {
  const flexion = (part: number, parent: number) =>
    postures.map((posture) => posture.poses[3 * parent + 2] - posture.poses[3 * part + 2])
  const reserve = postures.map((posture) => 60 * Math.sin(posture.margins_rad[0] - 4 * RAD))
  return {
    postures,
    endsBy: 'stop',
    endWords: 'Stop closed ends the travel at 75.0° of the drive.',
    driveUnit: 'rad',
    events: [
      { kind: 'open', arc_ratio: 0, drive: 0, words: 'open' },
      { kind: 'stop', arc_ratio: 1, drive: 75 * RAD, words: 'stop closed touches' },
    ],
    series: [
      { id: 'joint.mcp.flexion', title: 'mcp', unit: 'rad', values: flexion(1, 0) },
      { id: 'joint.pip.flexion', title: 'pip', unit: 'rad', values: flexion(2, 1) },
      { id: 'joint.dip.flexion', title: 'dip', unit: 'rad', values: flexion(3, 2) },
      {
        id: 'toggle.distal.deadCentreMargin',
        title: 'margin',
        unit: 'rad',
        values: postures.map((posture) => posture.margins_rad[0]),
      },
      { id: 'return.reserveMoving', title: 'moving', unit: 'N·mm per pin', values: reserve.map((value) => value + 6) },
      { id: 'return.reserveFromRest', title: 'from rest', unit: 'N·mm per pin', values: reserve },
    ],
    overlaps: [],
  }
}

/** Invented forces at a posture: the toggle's link pulls along a line that touches both friction circles. */
export function inventedForces(posture: Posture): ForcePicture {
  const [linkTop, linkTip] = [posture.pinsAt[5], posture.pinsAt[6]]
  const direction = Math.atan2(linkTip.y_mm - linkTop.y_mm, linkTip.x_mm - linkTop.x_mm)
  const lever = 0.22
  const through = { x_mm: linkTip.x_mm - lever * Math.sin(direction), y_mm: linkTip.y_mm + lever * Math.cos(direction) }
  const force = { x: 310 * Math.cos(direction), y: 310 * Math.sin(direction) }
  const circle = (pinIndex: number, part: number, against: number) => ({
    pin: pinIndex,
    part,
    against,
    at: posture.pinsAt[pinIndex],
    force_N: force,
    frictionCircle_mm: lever,
  })
  const back = moved([...posture.poses.slice(9, 12)], { x_mm: 12, y_mm: 5 })
  const push = posture.poses[11] - Math.PI / 2
  return {
    posture,
    title: 'Push on the back of the distal',
    pins: [circle(5, 5, 1), circle(6, 3, 5), circle(2, 3, 2)],
    linkLines: [{ part: 5, through, direction_rad: direction, tension_N: -310 }],
    loads: [{ at: back, force_N: { x: 40 * Math.cos(push), y: 40 * Math.sin(push) }, words: '40 N' }],
    stops: [{ stop: 0, at: linkTip, force_N: { x: 0, y: 120 } }],
    effort: { value: 240, unit: 'N·mm', words: 'effort to hold at the drive' },
  }
}
