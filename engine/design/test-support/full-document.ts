/** An invented finger whose document uses every section and nearly every key of the format, for tests only. */
const friction = (least: number, likely: number, most: number) => ({ least, likely, most })

const fullDocument = {
  $schema: 'fingerwright-design.schema.json',
  format: 'fingerwright-design/1',
  title: 'Crane, a finger that uses every key',
  note: 'Invented for tests.\nNo such finger is made.',
  generalTolerance: 'ISO 2768-m',
  variation: {
    sizes: { law: 'normal', capability: 1.33 },
    positions: 'normal',
    coatings: 'uniform',
    friction: 'uniform',
    springs: 'normal',
    wearers: { effortMost: { from: '1 N*m', to: '2.5 N*m' } },
  },
  dimensions: {
    proximalLength: '44 mm',
    inset: { value: 'proximalLength / 22', tolerance: { from: '1.98 mm', to: '2.01 mm' } },
    pinDiameter: { value: '3 mm', tolerance: 'h6' },
    holeDiameter: {
      value: 'pinDiameter + 0.012 mm',
      tolerance: { plus: '0.006 mm', minus: '0.006 mm', law: 'truncated', capability: 0.8 },
    },
    count: 3,
    area: 'proximalLength * inset',
  },
  materials: {
    'own alloy': {
      density: '2.8 g/cm^3',
      modulus: '71 GPa',
      fatigue: '150 MPa',
      fatigueCycles: 5e8,
      notchLength: '0.5 mm',
      source: 'invented',
    },
  },
  coatings: {
    'thin film': {
      thickness: { nominal: '2 um', within: '25 %' },
      bore: '80 %',
      cure: { temperature: '300 degF', time: '90 min' },
      source: 'invented',
    },
    'own anodise': { thickness: { from: '8 um', to: '12 um' }, inward: '2/3', keepsFatigue: '60 %', source: 'invented' },
  },
  friction: {
    'pin in hole': {
      moving: friction(0.05, 0.08, 0.11),
      rest: friction(0.06, 0.1, 0.14),
      wear: { rate: 'bonded MoS2 film on steel', film: '8 um', under: 'bare pin in hole' },
      source: 'invented',
    },
    'pin on shelf': {
      moving: { least: '5 %', likely: 0.1, most: '0.15' },
      rest: { least: 0.06, likely: '12 %', most: 0.18 },
      source: 'invented',
    },
    'bare pin in hole': {
      moving: friction(0.1, 0.2, 0.3),
      rest: friction(0.15, 0.22, 0.3),
      wear: { rate: 'own pair' },
      source: 'invented',
    },
  },
  wearRates: { 'own pair': { least: '1e-6 mm^3/N/m', likely: '5e-6 mm^3/N/m', most: '2e-5 mm^3/N/m', source: 'invented' } },
  parts: {
    proximal: {
      name: 'Proximal phalanx',
      role: 'proximal',
      material: 'own alloy',
      coating: 'hard anodise',
      masked: ['holes'],
      racks: [['20 mm', '7 mm']],
      outsideEdges: '-0.3 mm',
      outsideEdgesFrom: '-0.1 mm',
      insideEdges: '0.3 mm',
      roughness: '1.6 um',
      thickness: '10 mm',
      outline: [
        ['-5 mm', '-5 mm'],
        ['proximalLength + 5 mm', '-5 mm'],
        ['proximalLength + 5 mm', '7 mm'],
        ['-5 mm', '7 mm'],
      ],
      holes: {
        mcp: {
          x: '0 mm',
          y: '0 mm',
          diameter: 'holeDiameter',
          tolerance: { zone: 'H7', law: 'uniform' },
          position: '0.02 mm',
          positionBonus: true,
          edge: '-0.2 mm',
          roughness: '0.8 um',
        },
        pip: { x: 'proximalLength', y: '0 mm', diameter: 'holeDiameter', datum: true },
        top: { x: '45.13 mm', y: '4.33 mm', diameter: 'holeDiameter' },
      },
      pads: { pad: ['22 mm', '-6 mm'] },
      drawn: { x: '0 mm', y: '0 mm', turn: '0 deg' },
    },
    mount: {
      role: 'mount',
      holes: {
        mcp: { x: '0 mm', y: '0 mm', diameter: 'holeDiameter' },
        base: {
          x: '6.47 mm',
          y: '3.43 mm',
          diameter: '3 mm',
          tolerance: { plus: '0 mm', minus: '0.01 mm', measured: ['2.994 mm', '2.996 mm', '2.993 mm'] },
        },
      },
      pads: { anchor: ['-20 mm', '-4 mm'] },
    },
    middle: {
      role: 'middle',
      coating: 'own anodise',
      mass: '9 g',
      centreOfMass: { x: '12 mm', y: '0 mm' },
      holes: {
        pip: { x: '0 mm', y: '0 mm', diameter: 'holeDiameter' },
        base: { x: '4 mm', y: '-5.2 mm', diameter: 'holeDiameter' },
        dip: { x: '26 mm', y: '0 mm', diameter: 'holeDiameter' },
        guide: { x: '13 mm', y: '3 mm', diameter: '2 mm', slot: { length: '6 mm', along: '0 deg' } },
      },
      edges: {
        shelf: { from: ['20 mm', '-3 mm'], to: ['26 mm', '-3 mm'], profile: '0.02 mm', roughness: '0.4 um' },
        boss: { centre: ['26 mm', '0 mm'], radius: '4 mm', from: '0 deg', to: '90 deg', solid: 'inside' },
      },
      pads: { pad: ['13 mm', '-6 mm'] },
      drawn: { x: '44 mm', y: '0 mm', turn: '-4 deg' },
    },
    distal: {
      role: 'distal',
      mass: '0.2 oz',
      centreOfMass: { x: '10 mm', y: '0 mm' },
      holes: {
        dip: { x: '0 mm', y: '0 mm', diameter: 'holeDiameter' },
        top: { x: '-2.27 mm', y: '-5.41 mm', diameter: 'holeDiameter' },
      },
      pads: { tip: ['22 mm', '0 mm'], back: ['11 mm', '5 mm'] },
      drawn: { x: '69.93 mm', y: '-1.81 mm', turn: '-8 deg' },
    },
    baseLink: {
      name: 'Base link',
      role: 'link',
      mass: '0 g',
      holes: {
        mount: { x: '0 mm', y: '0 mm', diameter: 'holeDiameter' },
        middle: { x: '42.108 mm', y: '0 mm', diameter: 'holeDiameter' },
      },
      stiffness: '4000 N/mm',
    },
    topLink: {
      role: 'link',
      mass: '3 g',
      centreOfMass: { x: '12 mm', y: '0 mm' },
      holes: {
        proximal: { x: '0 mm', y: '0 mm', diameter: 'holeDiameter' },
        distal: { x: '24.507 mm', y: '0 mm', diameter: 'holeDiameter' },
      },
    },
    slider: {
      role: 'other',
      mass: '0 g',
      holes: { guide: { x: '0 mm', y: '0 mm', diameter: '2 mm' } },
      drawn: { x: '57 mm', y: '2 mm', turn: '0 deg' },
    },
  },
  pins: {
    mcp: {
      joins: ['mount.mcp', 'proximal.mcp'],
      diameter: 'pinDiameter',
      tolerance: 'h6',
      material: '17-4PH H900',
      coating: 'thin film',
      friction: 'pin in hole',
      shear: 'single',
      drag: '0.5 N*mm',
      edge: '-0.3 mm',
      edgeFrom: '-0.1 mm',
      roughness: '0.4 um',
    },
    base: { joins: ['mount.base', 'baseLink.mount'], diameter: 'pinDiameter', fixedIn: 'mount', friction: 'pin in hole' },
    pip: { joins: ['proximal.pip', 'middle.pip'], diameter: 'pinDiameter', friction: 'pin in hole' },
    linkMiddle: { joins: ['middle.base', 'baseLink.middle'], diameter: 'pinDiameter', friction: 'pin in hole' },
    linkTop: { joins: ['proximal.top', 'topLink.proximal'], diameter: 'pinDiameter', friction: 'pin in hole' },
    linkTip: { joins: ['topLink.distal', 'distal.top'], diameter: 'pinDiameter', friction: 'pin in hole' },
    dip: { joins: ['middle.dip', 'distal.dip'], diameter: 'pinDiameter', friction: 'pin in hole' },
    guide: { joins: ['slider.guide', 'middle.guide'], diameter: '2 mm', friction: 'pin in hole' },
  },
  stops: {
    closedStop: {
      round: { part: 'topLink', hole: 'distal', radius: '1.5 mm' },
      against: 'middle.shelf',
      across: [['-6 mm', '6 mm']],
      coating: 'thin film',
      friction: 'pin on shelf',
      gap: '0 mm',
    },
    padStop: {
      round: { part: 'distal', pad: 'back', radius: '1 mm' },
      against: 'middle.boss',
      profile: '0.05 mm',
      friction: 'pin on shelf',
    },
  },
  springs: {
    return: {
      kind: 'torsion',
      pin: 'mcp',
      on: 'proximal',
      against: 'mount',
      rate: '0.9 N*mm/deg',
      preload: '60 N*mm',
      within: { rate: '10 %', preload: 0.05 },
      ownFriction: '5 %',
    },
    pull: {
      kind: 'tension',
      from: { part: 'mount', x: '-10 mm', y: '6 mm' },
      to: { part: 'proximal', pad: 'pad' },
      rate: '0.4 N/mm',
      freeLength: '20 mm',
      initial: '1 N',
      within: { initial: '10 %' },
    },
    push: {
      kind: 'compression',
      from: { part: 'mount', hole: 'base' },
      to: { part: 'middle', hole: 'dip' },
      rate: '0.1 N/mm',
      freeLength: '90 mm',
      within: { rate: '8 %' },
      ownFriction: 0.1,
    },
  },
  drive: {
    kind: 'turn',
    part: 'proximal',
    against: 'mount',
    pin: 'mcp',
    open: '0 deg',
    closed: '80 deg',
    effortMost: '1.5 N*m',
  },
  release: { port: { kind: 'force', at: 'distal.back', direction: '90 deg', frame: 'distal' }, most: '20 N' },
  loadCases: {
    hook: {
      title: 'Hook on the back of the distal',
      forces: [{ at: 'distal.back', force: '60 N', direction: '90 deg', frame: 'distal' }],
      couples: [{ part: 'distal', against: 'mount', couple: '-100 N*mm' }],
      sideways: [{ at: 'distal.tip', force: '10 N' }],
      acts: 'closed',
      keeper: { port: { kind: 'drive' }, allowed: '200 N*mm' },
    },
    pad: {
      forces: [{ at: 'middle.pad', force: '10 lbf', direction: '90 deg' }],
      acts: 'travel',
      keeper: { port: { kind: 'couple', part: 'distal', against: 'mount' }, allowed: '300 N*mm' },
    },
  },
  toggles: { distal: { pins: ['linkTop', 'linkTip', 'dip'], folded: false } },
  weight: { from: '0 deg', to: '360 deg' },
  use: {
    closingsPerDay: 400,
    years: 1.5,
    shares: [
      { loadCase: 'pad', share: '30 %' },
      { loadCase: 'hook', share: 0.2 },
    ],
  },
  givesWay: [{ spring: 'pull' }, { pin: 'linkTip' }, { part: 'topLink' }],
  factors: {
    yield: 1.6,
    ultimate: '2.5',
    reason: 'A finger that breaks sheds loose pieces.',
    scatter: { load: '15 %', strength: 0.08, source: 'Guessed.' },
  },
  tip: 'distal.tip',
  requirements: {
    letsGo: {
      figure: 'return.letsGo',
      is: true,
      reason: 'A finger that stays shut is of no use.',
      source: 'the workshop',
      shownBy: [{ share: '99 %' }, { test: 'letsGo' }],
    },
    margin: {
      figure: 'closed.toggle.distal.deadCentreMargin',
      atLeast: '7 deg',
      reason: 'Common practice.',
      source: 'trade',
    },
    keeper: { figure: 'loadCase.hook.sustainingLoad', atMost: '200 N*mm', reason: 'Measured.', source: 'the wearer' },
    ratio: { figure: 'loadCase.pad.keeperRatio', atMost: 0.3, reason: 'Comfort.', source: 'the wearer' },
  },
  orders: {
    milled: { process: 'milled', parts: ['mount', 'proximal'], setUp: 150, each: 40, blank: '3.5' },
    wound: { process: 'wound', springs: ['push'], each: 4 },
    ground: { process: 'ground', pins: ['mcp', 'pip'], each: 2 },
  },
  bought: { washer: { title: 'Thrust washer', quantity: 4, each: 0.2, mass: '0.05 g' } },
  making: {
    set: 3,
    currency: 'crowns',
    wage: 38,
    assembly: 25,
    fitting: 10,
    inspection: 20,
    learning: '90 %',
    goodShare: '95 %',
    price: 1450,
  },
  grease: { arbour: { with: 'thin grease', amount: 'a film', springs: ['return'] } },
  demands: {
    edges: {
      asks: 'No edge can cut.',
      reason: 'Skin.',
      source: 'the workshop',
      shownBy: [{ test: 'felt' }, { document: 'Drawing 7', inHand: true }],
    },
  },
  benchTests: {
    letsGo: {
      sort: 'let go',
      title: 'Closes and lets go',
      passes: 'A hundred times out of a hundred.',
      done: { on: '2026-02-03', tried: 6, failed: 0, record: 'Book 3' },
    },
    felt: { sort: 'look', title: 'Edges felt', passes: 'No thread of cotton catches.' },
    carries: { sort: 'load', title: 'Carries', passes: 'Held for a minute.', inBook: { holds: '60 N' } },
  },
  riskScales: {
    probability: [
      { name: 'seldom', means: 'One finger in a thousand.', upTo: '0.1 %' },
      { name: 'often', means: 'More.', upTo: 1 },
    ],
    severity: [
      { name: 'nuisance', means: 'Nobody is hurt.', acceptable: 'often' },
      { name: 'injury', means: 'Somebody is hurt.', acceptable: 'seldom' },
    ],
  },
  risks: {
    staysShut: {
      hazard: 'A finger that does not let go',
      sequence: 'It jams on a rail.',
      harm: 'A fall',
      severity: 'injury',
      probability: 'often',
      controls: [{ by: 'design', does: 'Short of the jam.', check: 'Figure and bench.' }],
      residual: { severity: 'injury', probability: 'seldom', requirements: ['letsGo'], reason: 'Counted.' },
    },
  },
}

/** Values by their place, as in `parts.middle.holes.pip.x`; `undefined` takes the key out. */
export type Changes = Readonly<Record<string, unknown>>

/** Text of the full document with some places changed. */
export function documentText(changes: Changes = {}): string {
  const document = JSON.parse(JSON.stringify(fullDocument))
  for (const [place, value] of Object.entries(changes)) change(document, place.split('.'), value)
  return JSON.stringify(document)
}

function change(owner: Record<string, unknown>, [step, ...rest]: readonly string[], value: unknown): void {
  if (rest.length > 0) change(owner[step] as Record<string, unknown>, rest, value)
  else if (value === undefined) Reflect.deleteProperty(owner, step)
  else owner[step] = value
}
