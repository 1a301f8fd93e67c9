/** What came back from the field, as rows. */
import type { Design, FieldEntry } from '../../engine/index.ts'

/** One return or complaint. */
export interface FieldRow {
  readonly id: number
  readonly serial: string
  /** `complaint of 2031-05-01, lot L7, revision 2` */
  readonly head: string
  readonly told: string
  /** What the workshop found; absent until it has looked. */
  readonly found?: string
  readonly harm: FieldEntry['harm']
  /** Hazards of the risks that it belongs to; a risk that the design does not name any more by its id. */
  readonly risks: readonly string[]
  /** `C-014, in the green book`: a key, and where to look it up. For the workshop, not for a report. */
  readonly contact: string
}

/** In the place of hazards, where a return belongs to none. */
export const noRisk = 'no risk that is named: look whether one has to be written down'

/** Rows, oldest first. */
export function fieldRows(field: readonly FieldEntry[], { risks }: Pick<Design, 'risks'>): readonly FieldRow[] {
  const hazards = new Map(risks.map(({ id, hazard }) => [id, hazard]))
  return field.map(({ id, serial, sort, came, lot, revision, told, found, harm, contact, contactsIn, ...entry }) => ({
    id,
    serial,
    head: `${sort} of ${came}, lot ${lot}, revision ${revision}`,
    told,
    ...(found !== undefined && { found }),
    harm,
    risks: entry.risks.map((risk) => hazards.get(risk) ?? `${risk}, which the design does not name any more`),
    contact: `${contact}, in ${contactsIn}`,
  }))
}
