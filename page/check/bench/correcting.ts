import { readCorrection } from '../../../report/index.ts'
import type { Form } from './entry-form.tsx'

/** The same form as a correction: what is corrected stands in it, and it asks why. @param corrects number of the entry; undefined for a new one */
export function correcting<Key extends string, Entry>(
  form: Form<Key, Entry>,
  corrects: number | undefined,
): Form<Key | 'reason', Entry> {
  if (corrects === undefined) return form
  return {
    ...form,
    label: `Correction: ${form.label}`,
    does: 'Keep the correction',
    fields: [...form.fields, { key: 'reason', words: 'Why it is corrected', isLong: true }],
    read: (typed) => readCorrection(form.read(typed), { corrects, reason: typed.reason }),
  }
}
