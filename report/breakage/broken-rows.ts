/** What happens when something breaks, as rows, as a sentence and as a document. */
import { type Broken, type BrokenMember, type Design, shownFigure } from '../../engine/index.ts'
import { marks } from '../tables/marks.ts'

/** One thing that may give way. */
export interface BrokenRow {
  readonly what: string
  readonly margin: string
  readonly says: string
  readonly finger: string
  /** Parts that fall off, and parts that swing although the drive is held. */
  readonly loose: string
  readonly limp: string
}

/** What stands over the columns of `brokenRows`. */
export const brokenHeads: BrokenRow = {
  what: 'if this breaks',
  margin: 'margin',
  says: 'by',
  finger: 'the finger',
  loose: 'falls off',
  limp: 'swings freely',
}

/** One row a member, the least margin first. */
export function brokenRows(design: Design, { members }: Broken): readonly BrokenRow[] {
  const names = (parts: readonly number[]) => parts.map((part) => design.parts[part].id).join(', ') || '–'
  return members.map(({ words, margin, says, outcome, loose, limp }) => ({
    what: words,
    margin: margin === undefined ? '–' : shownFigure(margin, '1', { digits: 2 }).number,
    says: says ?? '–',
    finger: outcome,
    loose: names(loose),
    limp: names(limp),
  }))
}

/** Which breaks leave the wearer with a closed finger or with pieces, and whether the stated order holds. */
export function brokenSentence({ members, order }: Broken): string {
  const [first] = members
  const begins = first?.margin === undefined ? '' : `First ${first.words} gives way: the finger ${first.outcome} then. `
  const of = (outcome: BrokenMember['outcome']) =>
    members.filter((member) => member.outcome === outcome).map(({ words }) => words)
  const apart = of('comes apart')
  const closed = of('stays closed')
  const pieces = apart.length === 0 ? 'No break sheds a piece' : `It comes apart without ${apart.join(', ')}`
  const stuck = closed.length === 0 ? 'none leaves it closed' : `it stays closed without ${closed.join(', ')}`
  return `${begins}${pieces}; ${stuck}.${orderWords(order)}`
}

function orderWords(order: Broken['order']): string {
  if (!order) return ''
  const { word } = marks[order.verdict]
  return ` The order in which things are to give way is ${word}${order.why === undefined ? '' : `: ${order.why}`}.`
}

/** What the table of breaks does not say. */
export const brokenGround =
  'What is left is judged at the postures that the whole finger had, without loads and without weight; a part that breaks is taken to hold none of its pins together, and its own pieces hang on them. A limp part falls wherever its weight takes it.'

/** The breaks for machines; parts by their ids. */
export function brokenDocument(design: Design, { members, order }: Broken): object {
  const ids = (parts: readonly number[]) => parts.map((part) => design.parts[part].id)
  const rows = members.map(({ words, margin, says, outcome, loose, limp }) => {
    return { member: words, ...(margin !== undefined && { margin, by: says }), outcome, loose: ids(loose), limp: ids(limp) }
  })
  const steps = order?.steps.map(({ words, margin }) => ({ member: words, ...(margin !== undefined && { margin }) }))
  return { members: rows, ...(order && { order: { verdict: order.verdict, ...(order.why && { why: order.why }), steps } }) }
}
