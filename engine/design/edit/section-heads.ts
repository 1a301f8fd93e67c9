/** Kinds of things that can be added to a design. */
export type AdditionKind =
  | 'dimension'
  | 'rack point'
  | 'masked face'
  | 'edge states'
  | 'screw'
  | 'grease point'
  | 'part'
  | 'link'
  | 'hole'
  | 'pad'
  | 'pin'
  | 'stop'
  | 'torsion spring'
  | 'tension spring'
  | 'load case'
  | 'toggle'
  | 'requirement'

/** A section of the tables: its keys of the document, unless the only one is its id, and what can be added to it. */
export interface SectionHead {
  readonly id: string
  readonly title: string
  readonly keys?: readonly string[]
  readonly adds?: readonly AdditionKind[]
}

/** The sections in the order in which they are read. That of the parts stands for one section a part. */
export const sectionHeads: readonly SectionHead[] = [
  { id: 'design', title: 'The design', keys: ['title', 'note', 'tip', 'weight', 'generalTolerance'] },
  { id: 'dimensions', title: 'Dimensions', adds: ['dimension'] },
  { id: 'parts', title: 'Parts', adds: ['hole', 'pad', 'rack point', 'masked face', 'edge states', 'part', 'link'] },
  { id: 'pins', title: 'Pins', adds: ['pin'] },
  { id: 'stops', title: 'Stops', adds: ['stop'] },
  { id: 'springs', title: 'Springs', adds: ['torsion spring', 'tension spring'] },
  { id: 'drive', title: 'Drive' },
  { id: 'release', title: 'Release' },
  { id: 'loadCases', title: 'Loads', adds: ['load case'] },
  { id: 'screws', title: 'Screws', adds: ['screw'] },
  { id: 'grease', title: 'Grease', adds: ['grease point'] },
  { id: 'use', title: 'Use', keys: ['use', 'givesWay', 'factors'] },
  { id: 'toggles', title: 'Toggles', adds: ['toggle'] },
  { id: 'requirements', title: 'Requirements', adds: ['requirement'] },
  { id: 'demands', title: 'Demands in words' },
  { id: 'benchTests', title: 'Bench tests' },
  { id: 'risks', title: 'Risks', keys: ['riskScales', 'risks'] },
  { id: 'friction', title: 'Friction' },
  { id: 'variation', title: 'Variation' },
  { id: 'orders', title: 'Orders' },
  { id: 'bought', title: 'Bought items' },
  { id: 'making', title: 'Making' },
  { id: 'wearRates', title: 'Rates of wear of its own' },
  { id: 'materials', title: 'Materials of its own' },
  { id: 'coatings', title: 'Coatings of its own' },
]
