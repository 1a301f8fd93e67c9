import { describe, expect, it } from 'vitest'
import type { Design } from './design.ts'
import { tableCoatings } from './read-coatings.ts'
import { readDesign } from './read-design.ts'
import { type Changes, documentText } from './test-support/full-document.ts'

function designOf(changes?: Changes, name?: string): Design {
  const { value, problems } = readDesign(documentText(changes), name)
  if (!value) throw new Error(JSON.stringify(problems))
  return value
}

const degree = Math.PI / 180

describe('a document that uses every key', () => {
  const design = designOf(undefined, 'crane')

  it('takes its name from the door and its texts from the file', () => {
    expect(design).toMatchObject({ name: 'crane', title: 'Crane, a finger that uses every key' })
    expect(readDesign(documentText()).value?.name).toBe('design')
  })

  it('resolves dimensions in the order they need one another and keeps them as typed', () => {
    // SOURCE hand (44 mm / 22 = 2 mm; 3 mm + 0.012 mm; limits 1.98 and 2.01 mm about 2 mm; 44 mm · 2 mm = 88 mm²)
    expect(design.dimensions).toEqual([
      { name: 'proximalLength', value: 44, unit: 'mm', typed: '44 mm' },
      {
        name: 'inset',
        value: 2,
        unit: 'mm',
        typed: 'proximalLength / 22',
        tolerance: { kind: 'limits', lower: expect.closeTo(-0.02, 12), upper: expect.closeTo(0.01, 12) },
      },
      {
        name: 'pinDiameter',
        value: 3,
        unit: 'mm',
        typed: '3 mm',
        tolerance: { kind: 'zone', zone: 'h6', lower: -0.006, upper: 0 },
      },
      {
        name: 'holeDiameter',
        value: 3.012,
        unit: 'mm',
        typed: 'pinDiameter + 0.012 mm',
        tolerance: { kind: 'limits', lower: -0.006, upper: 0.006, law: { kind: 'truncated', capability: 0.8 } },
      },
      { name: 'count', value: 3, unit: '1', typed: '3' },
      { name: 'area', value: 88, unit: 'mm^2', typed: 'proximalLength * inset' },
    ])
  })

  it('reads how what varies is spread', () => {
    // SOURCE hand (as typed; N·mm for a drive that turns; the measured sizes in ascending order, the deviations of 3 mm)
    expect(design.generalTolerance).toBe('m')
    expect(design.variation).toEqual({
      sizes: { kind: 'normal', capability: 1.33 },
      positions: 'normal',
      coatings: 'uniform',
      friction: 'uniform',
      springs: 'normal',
      effortOfWearers: { least: 1000, most: 2500 },
    })
    expect(design.parts[0].holes[1].tolerance).toEqual({
      kind: 'limits',
      lower: -0.01,
      upper: 0,
      law: { kind: 'sample', values: [2.993, 2.994, 2.996] },
    })
    expect(design.parts[1].holes.map(({ isDatum }) => isDatum)).toEqual([undefined, true, undefined])
    expect(design.stops[0].coating?.name).toBe('thin film')
    expect(design.stops[1].coating).toBeUndefined()
    expect(designOf({ variation: undefined, generalTolerance: undefined })).not.toHaveProperty('variation')
  })

  it('reads how it is used and what is to give way', () => {
    // SOURCE hand (30 % = 0.3; load case hook is the first, pad the second; spring pull the second, pin linkTip the sixth, part topLink the sixth)
    expect(design.use).toEqual({
      closingsPerDay: 400,
      years: 1.5,
      shares: [
        { loadCase: 1, share_ratio: 0.3 },
        { loadCase: 0, share_ratio: 0.2 },
      ],
    })
    const scatter = { load_ratio: 0.15, strength_ratio: 0.08, source: 'Guessed.' }
    expect(design.factors).toEqual({ yield: 1.6, ultimate: 2.5, reason: 'A finger that breaks sheds loose pieces.', scatter })
    expect(design.givesWay?.map(({ kind, index }) => `${kind} ${index}`)).toEqual(['spring 1', 'pin 5', 'part 5'])
  })

  it('puts the mount first and keeps the order of the others', () => {
    expect(design.parts.map((part) => part.id)).toEqual([
      'mount',
      'proximal',
      'middle',
      'distal',
      'baseLink',
      'topLink',
      'slider',
    ])
    expect(design.parts[0].drawn).toEqual({ at: { x_mm: 0, y_mm: 0 }, turn_rad: 0 })
    expect(design.parts[5].drawn).toBeUndefined()
  })

  it('reads where a part lies across the width', () => {
    const across = [
      ['-6 mm', '-4 mm'],
      ['0.4 cm', '2 mm + 4 mm'],
    ]
    // SOURCE hand (as typed; 0.4 cm = 4 mm)
    expect(designOf({ 'parts.middle.across': across }).parts[2].across).toEqual([
      { from_mm: -6, to_mm: -4 },
      { from_mm: 4, to_mm: 6 },
    ])
    expect(design.parts[1].across).toBeUndefined()
  })

  it('reads a part with all it has', () => {
    // SOURCE hand (44 mm + 5 mm; 2.8 g/cm³ = 2.8e-6 kg/mm³; 71 GPa = 71000 MPa; the outline as typed)
    expect(design.parts[1]).toMatchObject({
      name: 'Proximal phalanx',
      role: 'proximal',
      material: { name: 'own alloy', density_kg_mm3: expect.closeTo(2.8e-6, 15), modulus_MPa: 71_000, source: 'invented' },
      coating: tableCoatings.get('hard anodise'),
      masked: ['holes'],
      thickness_mm: 10,
      outline: [
        { x_mm: -5, y_mm: -5 },
        { x_mm: 49, y_mm: -5 },
        { x_mm: 49, y_mm: 7 },
        { x_mm: -5, y_mm: 7 },
      ],
      pads: [{ id: 'pad', at: { x_mm: 22, y_mm: -6 } }],
    })
    expect(design.parts[1].holes[0]).toEqual({
      id: 'mcp',
      at: { x_mm: 0, y_mm: 0 },
      diameter_mm: 3.012,
      tolerance: { kind: 'zone', zone: 'H7', lower: 0, upper: expect.closeTo(0.012, 12), law: { kind: 'uniform' } },
      hasPositionBonus: true,
      positionZone_mm: 0.02,
      edge: { from_mm: 0, to_mm: -0.2 },
      roughness_mm: expect.closeTo(0.0008, 12),
    })
  })

  it('reads slots, edges, masses and a stiffness', () => {
    const middle = design.parts[2]
    // SOURCE hand (as typed; 9 g = 0.009 kg; 0.2 oz = 0.2 · 0.45359237 kg / 16; 90° = π/2)
    expect(middle.holes[3].slot).toEqual({ length_mm: 6, along_rad: 0 })
    expect(middle.edges).toEqual([
      {
        id: 'shelf',
        kind: 'straight',
        from: { x_mm: 20, y_mm: -3 },
        to: { x_mm: 26, y_mm: -3 },
        profileZone_mm: 0.02,
        roughness_mm: 0.0004,
      },
      {
        id: 'boss',
        kind: 'arc',
        centre: { x_mm: 26, y_mm: 0 },
        radius_mm: 4,
        from_rad: 0,
        to_rad: Math.PI / 2,
        solid: 'inside',
      },
    ])
    expect(middle.mass_kg).toBeCloseTo(0.009, 15)
    expect(middle.centreOfMass).toEqual({ x_mm: 12, y_mm: 0 })
    expect(design.parts[3].mass_kg).toBeCloseTo((0.2 * 0.45359237) / 16, 15)
    expect(design.parts[4].stiffness_N_mm).toBe(4000)
  })

  it('reads a pin with all it has, and the defaults of one with little', () => {
    // SOURCE hand (as typed; parts and holes counted from 0 in the order above)
    expect(design.pins[0]).toMatchObject({
      id: 'mcp',
      joins: [
        { part: 0, hole: 0 },
        { part: 1, hole: 0 },
      ],
      diameter_mm: 3,
      tolerance: { kind: 'zone', zone: 'h6' },
      material: { name: '17-4PH H900' },
      fixedIn: 0,
      shear: 'single',
      drag_Nmm: 0.5,
    })
    expect(design.pins[0].friction.moving).toEqual({ least: 0.05, likely: 0.08, most: 0.11 })
    expect(design.pins[2]).toMatchObject({ id: 'pip', fixedIn: 1, shear: 'double', drag_Nmm: 0 })
    expect(design.pins[2].tolerance).toBeUndefined()
  })

  it('reads shares typed as numbers, as text and in per cent', () => {
    // SOURCE hand (5 % = 0.05, 12 % = 0.12; the rest as typed)
    expect(design.frictionPairs[1]).toMatchObject({
      name: 'pin on shelf',
      moving: { least: 0.05, likely: 0.1, most: 0.15 },
      rest: { least: 0.06, likely: 0.12, most: 0.18 },
    })
  })

  it('reads stops at a hole and at a pad', () => {
    // SOURCE hand (the hole of topLink at 24.507, 0; the pad of distal at 11, 5; parts and edges counted from 0)
    expect(design.stops[0]).toMatchObject({
      id: 'closedStop',
      round: { part: 5, at: { x_mm: 24.507, y_mm: 0 }, radius_mm: 1.5 },
      against: { part: 2, edge: 0 },
      gap_mm: 0,
    })
    expect(design.stops[1]).toMatchObject({
      round: { part: 3, at: { x_mm: 11, y_mm: 5 }, radius_mm: 1 },
      against: { part: 2, edge: 1 },
      gap_mm: 0,
    })
  })

  it('reads the three kinds of spring', () => {
    // SOURCE hand (0.9 N·mm per degree; ends at −10, 6 on the mount, at the pad 22, −6, at the holes 6.47, 3.43 and 26, 0)
    expect(design.springs).toEqual([
      {
        id: 'return',
        kind: 'torsion',
        pin: 0,
        on: 1,
        against: 0,
        rate_Nmm_rad: expect.closeTo(0.9 / degree, 10),
        preload_Nmm: 60,
        within: { rate_ratio: 0.1, preload_ratio: 0.05 },
        ownFriction_ratio: 0.05,
      },
      {
        id: 'pull',
        kind: 'tension',
        from: { part: 0, at: { x_mm: -10, y_mm: 6 } },
        to: { part: 1, at: { x_mm: 22, y_mm: -6 } },
        rate_N_mm: 0.4,
        freeLength_mm: 20,
        initial_N: 1,
        within: { initial_ratio: 0.1 },
        ownFriction_ratio: 0,
      },
      {
        id: 'push',
        kind: 'compression',
        from: { part: 0, at: { x_mm: 6.47, y_mm: 3.43 } },
        to: { part: 2, at: { x_mm: 26, y_mm: 0 } },
        rate_N_mm: 0.1,
        freeLength_mm: 90,
        initial_N: 0,
        within: { rate_ratio: 0.08 },
        ownFriction_ratio: 0.1,
      },
    ])
  })

  it('reads drive, release, weight and tip', () => {
    // SOURCE hand (80° in rad, 1.5 N·m = 1500 N·mm, 360° = 2π; parts and pads counted from 0)
    expect(design.drive).toEqual({
      kind: 'turn',
      part: 1,
      against: 0,
      pin: 0,
      travel: { open: 0, closed: expect.closeTo(80 * degree, 14), effortMost: 1500 },
    })
    expect(design.release).toEqual({
      port: { kind: 'force', part: 3, pad: 1, direction_rad: Math.PI / 2, frame: 3 },
      most: 20,
    })
    expect(design.weight).toEqual({ from_rad: 0, to_rad: 2 * Math.PI })
    expect(design.tip).toEqual({ part: 3, pad: 0 })
  })

  it('reads load cases with their keepers', () => {
    // SOURCE hand (as typed; 10 lbf = 44.482216152605 N; a force without frame keeps to the mount, part 0)
    expect(design.loadCases).toEqual([
      {
        id: 'hook',
        name: 'Hook on the back of the distal',
        forces: [{ part: 3, pad: 1, direction_rad: Math.PI / 2, frame: 3, force_N: 60 }],
        couples: [{ part: 3, against: 0, couple_Nmm: -100 }],
        sideways: [{ part: 3, pad: 0, force_N: 10 }],
        acts: 'closed',
        keeper: { port: { kind: 'drive' }, allowed: 200 },
      },
      {
        id: 'pad',
        name: 'pad',
        forces: [{ part: 2, pad: 0, direction_rad: Math.PI / 2, frame: 0, force_N: expect.closeTo(44.482216152605, 12) }],
        couples: [],
        sideways: [],
        acts: 'travel',
        keeper: { port: { kind: 'couple', part: 3, against: 0 }, allowed: 300 },
      },
    ])
  })

  it('reads toggles and requirements in the unit of their figures', () => {
    // SOURCE hand (pins counted from 0; 7° in rad; the rest as typed)
    expect(design.toggles).toEqual([{ id: 'distal', a: 4, b: 5, c: 6, folded: false }])
    expect(design.requirements.map(({ figure, bound }) => ({ figure, bound }))).toEqual([
      { figure: 'return.letsGo', bound: { kind: 'is', value: true } },
      {
        figure: 'closed.toggle.distal.deadCentreMargin',
        bound: { kind: 'atLeast', value: expect.closeTo(7 * degree, 14), unit: 'rad', typed: '7 deg' },
      },
      {
        figure: 'loadCase.hook.sustainingLoad',
        bound: { kind: 'atMost', value: 200, unit: 'N·mm', typed: '200 N*mm' },
      },
      { figure: 'loadCase.pad.keeperRatio', bound: { kind: 'atMost', value: 0.3, unit: '1', typed: '0.3' } },
    ])
  })
})

it('reads a drive that pulls on a point, in mm and N', () => {
  const { drive } = designOf({
    'variation.wearers': undefined,
    drive: {
      kind: 'pull',
      on: { part: 'proximal', pad: 'pad' },
      towards: { part: 'mount', pad: 'anchor' },
      open: '0 mm',
      closed: '3/4 in',
      effortMost: '10 lbf',
    },
    'loadCases.hook.keeper.allowed': '5 N',
    'requirements.keeper.atMost': '5 N',
  })
  // SOURCE hand (3/4 in = 19.05 mm, 10 lbf = 44.482216152605 N; pads as typed)
  expect(drive).toEqual({
    kind: 'pull',
    on: { part: 1, at: { x_mm: 22, y_mm: -6 } },
    towards: { part: 0, at: { x_mm: -20, y_mm: -4 } },
    travel: { open: 0, closed: expect.closeTo(19.05, 12), effortMost: expect.closeTo(44.482216152605, 12) },
  })
})

it('reads a drive that wraps a roller', () => {
  const { drive } = designOf({
    'variation.wearers': undefined,
    drive: {
      kind: 'wrap',
      roller: { part: 'proximal', hole: 'mcp' },
      pitchRadius: '8 mm',
      turns: 'clockwise',
      towards: { part: 'mount', x: '-30 mm', y: '8 mm' },
      open: '0 mm',
      closed: '12 mm',
    },
    'loadCases.hook.keeper.allowed': '5 N',
    'requirements.keeper.atMost': '5 N',
  })
  // SOURCE hand (as typed)
  expect(drive).toEqual({
    kind: 'wrap',
    roller: { part: 1, at: { x_mm: 0, y_mm: 0 } },
    pitchRadius_mm: 8,
    turns: 'clockwise',
    towards: { part: 0, at: { x_mm: -30, y_mm: 8 } },
    travel: { open: 0, closed: 12 },
  })
})

it('reads the smallest finger: two parts, one pin, a drive', () => {
  const text = JSON.stringify({
    format: 'fingerwright-design/1',
    title: 'Hinge',
    friction: {
      dry: { moving: { least: 0, likely: 0, most: 0 }, rest: { least: 0, likely: 0, most: 0 }, source: 'a limit case' },
    },
    parts: {
      mount: { role: 'mount', holes: { a: { x: '0 mm', y: '0 mm', diameter: '3 mm' } } },
      arm: {
        role: 'proximal',
        holes: { a: { x: '0 mm', y: '0 mm', diameter: '3 mm' } },
        drawn: { x: '0 mm', y: '0 mm', turn: '0 deg' },
      },
    },
    pins: { a: { joins: ['mount.a', 'arm.a'], diameter: '3 mm', friction: 'dry' } },
    drive: { kind: 'turn', part: 'arm', against: 'mount', pin: 'a', open: '0 deg', closed: '90 deg' },
  })
  const design = readDesign(text).value
  expect(design).toMatchObject({ note: '', dimensions: [], stops: [], springs: [], loadCases: [], toggles: [], requirements: [] })
  expect(design).not.toHaveProperty('weight')
  expect(design).not.toHaveProperty('release')
  expect(design).not.toHaveProperty('tip')
  expect(design).not.toHaveProperty('use')
  expect(design).not.toHaveProperty('givesWay')
  expect(design).not.toHaveProperty('factors')
})
