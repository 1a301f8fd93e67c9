import type { Checked } from '../../../engine/index.ts'
import { fieldReader } from './field-reader.ts'

/** What an entry says beside its own words where it stands in the place of another. */
export interface Correcting {
  /** Number of the entry that it corrects. */
  readonly corrects: number
  readonly reason: string
}

/** An entry that stands in the place of another, with the reason; both stay in the book. */
export function readCorrection<Entry>(
  read: Checked<Entry>,
  { corrects, reason: typed }: Correcting,
): Checked<Entry & Correcting> {
  const { problems, words } = fieldReader({ reason: typed })
  const reason = words('reason', 'why it is corrected')
  if (read.problems !== undefined || problems.length > 0) return { problems: [...(read.problems ?? []), ...problems] }
  return { value: { ...read.value, corrects, reason } }
}
