import { quoted } from '../numbers/quote.ts'
import type { Design, Member, Use } from './design.ts'
import type { Document } from './document.ts'
import type { Workbench } from './read-joints.ts'
import { notFound } from './references.ts'

type TypedUse = NonNullable<Document['use']>
type TypedMember = NonNullable<Document['givesWay']>[number]

/** How often the finger is closed, and under which loads; undefined when the document does not say. */
export function readUse(bench: Workbench): Design['use'] {
  const { reading } = bench
  const typed = reading.document.use
  if (!typed) return undefined
  return {
    closingsPerDay: reading.above0('use.closingsPerDay', typed.closingsPerDay, 'number'),
    years: reading.above0('use.years', typed.years, 'number'),
    ...(typed.shares && { shares: readShares(typed.shares, bench) }),
  }
}

function readShares(typed: NonNullable<TypedUse['shares']>, { reading, find }: Workbench): NonNullable<Use['shares']> {
  const shares = typed.map((one, index) => ({
    loadCase: find.loadCase(`use.shares.${index}.loadCase`, one.loadCase),
    share_ratio: reading.atLeast(`use.shares.${index}.share`, one.share, { kind: 'number', least: 0 }),
  }))
  for (const [index, { loadCase }] of shares.entries()) {
    if (loadCase === notFound || shares.findIndex((one) => one.loadCase === loadCase) === index) continue
    const found = quoted(typed[index].loadCase)
    const place = `use.shares.${index}.loadCase`
    reading.report({ code: 'used twice', place, found, needed: 'each load case once' })
  }
  const sum = shares.reduce((total, { share_ratio }) => total + share_ratio, 0)
  if (sum > 1 + SHARES_ROUNDING) {
    const found = `shares of ${Number(sum.toPrecision(6))} together`
    reading.report({ code: 'too large', place: 'use.shares', found, needed: 'at most 1 (100 %) together' })
  }
  return shares
}

/** Shares typed as parts of a hundred may round to a little more than the whole. */
const SHARES_ROUNDING = 1e-9

/** What is to give way first under too much load; undefined when the document does not say. */
export function readGivesWay(bench: Workbench): Design['givesWay'] {
  const typed = bench.reading.document.givesWay
  if (!typed) return undefined
  const members = typed.map((one, index) => readMember(`givesWay.${index}`, one, bench))
  const isAgain = ({ kind, index }: Member, at: number) =>
    index !== notFound && members.findIndex((one) => one.kind === kind && one.index === index) !== at
  for (const [index, member] of members.entries()) {
    if (!isAgain(member, index)) continue
    const found = `${member.kind} ${quoted(Object.values(typed[index])[0])}`
    bench.reading.report({ code: 'used twice', place: `givesWay.${index}`, found, needed: 'each of them once' })
  }
  return members
}

function readMember(place: string, typed: TypedMember, { find }: Workbench): Member {
  if ('pin' in typed) return { kind: 'pin', index: find.pin(`${place}.pin`, typed.pin) }
  if ('part' in typed) return { kind: 'part', index: find.part(`${place}.part`, typed.part) }
  return { kind: 'spring', index: find.spring(`${place}.spring`, typed.spring) }
}
