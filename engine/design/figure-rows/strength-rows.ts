import type { FigureRow } from './figure-row.ts'

/** Figures of what gives first; each but the words is a margin of safety. */
export const strengthRows: readonly FigureRow[] = [
  ['strength.least', '1', 'Least margin of strength'],
  ['strength.givesFirst', 'words', 'Gives first'],
  ['strength.pin.<everyPin>.shear', '1', 'Margin of pin <everyPin> in shear'],
  ['strength.pin.<everyPin>.bending', '1', 'Margin of pin <everyPin> in bending'],
  ['strength.pin.<everyPin>.bearing', '1', 'Margin of the holes at pin <everyPin> under its pressure'],
  ['strength.pin.<everyPin>.tearOut', '1', 'Margin of the lugs at pin <everyPin> against tearing out'],
  ['strength.pin.<everyPin>.section', '1', 'Margin of the sections beside pin <everyPin>'],
  ['strength.pin.<everyPin>.fatigue', '1', 'Margin of pin <everyPin> against a crack over its life'],
  ['strength.pin.<everyPin>.lugFatigue', '1', 'Margin of the lugs at pin <everyPin> against a crack over its life'],
  ['strength.pin.<everyPin>.sideLoad', '1', 'Margin of the hinge at pin <everyPin> leant on from the side'],
  ['strength.part.<everyPart>.bending', '1', 'Margin of <everyPart> bent in the plane'],
  ['strength.part.<everyPart>.sideLoad', '1', 'Margin of <everyPart> leant on from the side'],
  ['strength.link.<link>.tension', '1', 'Margin of <link> in tension'],
  ['strength.link.<link>.buckling', '1', 'Margin of <link> against buckling'],
  ['strength.stop.<stop>.contact', '1', 'Margin of stop <stop> against a dent'],
  ['strength.spring.<woundSpring>.set', '1', 'Margin of spring <woundSpring> against a set'],
  ['strength.spring.<woundSpring>.fatigue', '1', 'Margin of spring <woundSpring> against breaking in use'],
  ['strength.spring.<roomySpring>.room', '1', 'Margin of the room of spring <roomySpring>'],
  ['strength.spring.<pressedSpring>.buckling', '1', 'Margin of spring <pressedSpring> against buckling'],
  ['strength.spring.<pulledSpring>.hook', '1', 'Margin of the hooks of spring <pulledSpring>'],
  ['strength.screw.<screw>.proof', '1', 'Margin of screw <screw> against stretching'],
  ['strength.screw.<screw>.stripping', '1', 'Margin of screw <screw> against stripping'],
  ['strength.screw.<mountScrew>.separation', '1', 'Margin of the joint of screw <mountScrew> against opening'],
]
