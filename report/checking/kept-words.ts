import type { FieldEntry } from '../../engine/index.ts'
import type { CertificateEntry } from './entries/read-entry.ts'
import type { TestEntry } from './entries/read-test.ts'

/** What is told of a certificate, from whatever door it comes. */
export type ToldCertificate = Pick<CertificateEntry, 'coating' | 'coupons_mm' | 'issued'> & {
  readonly cure_degC?: number | undefined
  readonly cure_min?: number | undefined
  readonly note?: string | undefined
}
/** What is told of a bench test. */
export type ToldTest = Pick<TestEntry, 'test' | 'value' | 'outcome' | 'tested' | 'rig'> & {
  readonly figure?: string | undefined
  readonly uncertainty?: number | undefined
  readonly note?: string | undefined
}

/** A film is told in µm. */
const MICROMETRES = 1000
/** A film in µm. */
export const filmText = (coupon_mm: number): string => String(Number((coupon_mm * MICROMETRES).toPrecision(4)))

/** `Coating film, certificate of 2031-04-01: coupons of 12, 12.5 µm, cured at 180 °C for 20 min.` */
export function certificateWords(certificate: ToldCertificate): string {
  const { coating, coupons_mm, cure_degC, cure_min, issued, note } = certificate
  const cure = [
    ...(cure_degC === undefined ? [] : [`at ${cure_degC} °C`]),
    ...(cure_min === undefined ? [] : [`for ${cure_min} min`]),
  ]
  const cured = cure.length === 0 ? '' : `, cured ${cure.join(' ')}`
  return `Coating ${coating}, certificate of ${issued}: coupons of ${coupons_mm.map(filmText).join(', ')} µm${cured}.${noted(note)}`
}

const DID = { did: 'it did', 'did not': 'it did not', measured: 'as measured' } as const

/** `Load to hold 60 N: it did. Tested on 2031-04-04 on rig 1.` */
export function testWords(test: ToldTest): string {
  const { value, uncertainty, figure, outcome, tested, rig, note } = test
  const title = test.test.charAt(0).toUpperCase() + test.test.slice(1)
  const open = uncertainty === undefined ? '' : ` ± ${uncertainty}`
  const amount = test.test === 'cycles' ? `${value}` : `${value}${open} N`
  const against = figure === undefined ? '' : `, against ${figure}`
  return `${title} ${amount}: ${DID[outcome]}${against}. Tested on ${tested} on ${rig}.${noted(note)}`
}

/** `A complaint came on 2031-05-01: did not open once. Nobody hurt. Found: stiff grease. Risk doesNotLetGo.` Who told it is a key, and is left out. */
export function cameBackWords(entry: Pick<FieldEntry, 'sort' | 'came' | 'told' | 'found' | 'harm' | 'risks'>): string {
  const { sort, came, told, found, harm, risks } = entry
  const hurt = harm === 'not known' ? 'Whether somebody was hurt is not known' : harm.charAt(0).toUpperCase() + harm.slice(1)
  const belongs = risks.length === 0 ? 'No risk that is named has it' : `Risk ${risks.join(', ')}`
  return `A ${sort} came on ${came}: ${told}. ${hurt}. ${found === undefined ? '' : `Found: ${found}. `}${belongs}.`
}

/** What was decided and signed off about a serial number, as the bench book keeps it. */
export interface KeptPapers {
  readonly decisions: readonly (Signed & ToldDecision & { readonly correctedBy?: number | undefined })[]
  readonly signOffs: readonly (Signed & { readonly statement: string })[]
}

/** What is told of a decision. */
export interface ToldDecision {
  readonly decision: string
  readonly why: string
  readonly consequence: string
}

interface Signed {
  readonly who: string
  /** ISO 8601 in UTC. */
  readonly made: string
}

/** `Decided: use as is, because by a hair. As calculated: holds as measured` */
export const decisionWords = ({ decision, why, consequence }: ToldDecision): string =>
  `Decided: ${decision}, because ${why}. As calculated: ${consequence}`

/** Decisions that nobody corrected. */
export const standingDecisions = <One extends { readonly correctedBy?: number | undefined }>(
  all: readonly One[],
): readonly One[] => all.filter(({ correctedBy }) => correctedBy === undefined)

/** Decisions and sign-offs that stand, with name and day, a line each. */
export function paperLines({ decisions, signOffs }: KeptPapers): readonly string[] {
  const signed = ({ who, made }: Signed): string => `${who}, ${made.slice(0, DAY_letters)}`
  return [
    ...standingDecisions(decisions).map(
      (one) => `Decided: ${one.decision}, because ${one.why} (${signed(one)}). As calculated: ${one.consequence}`,
    ),
    ...signOffs.map((one) => `Signed off (${signed(one)}). ${one.statement}`),
  ]
}

/** Of a moment in ISO 8601: 2031-04-05. */
const DAY_letters = 10

const noted = (note: string | undefined): string => (note === undefined ? '' : ` ${note}`)
