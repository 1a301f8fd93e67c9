import type { Checked } from '../../../engine/index.ts'
import { fieldReader, type TypedFields } from './field-reader.ts'

/** An import that is taken back as a whole. */
export interface WithdrawalEntry {
  readonly kind: 'withdrawal'
  /** Its number in the book. */
  readonly import: number
  readonly reason: string
}

/** Reads why an import is taken back. */
export function readWithdrawal(typed: TypedFields<'reason'>, id: number): Checked<WithdrawalEntry> {
  const { problems, words } = fieldReader(typed)
  const reason = words('reason', 'why it is taken back')
  return problems.length > 0 ? { problems } : { value: { kind: 'withdrawal', import: id, reason } }
}
