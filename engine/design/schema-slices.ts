import * as z from 'zod'
import { length } from './schema-leaves.ts'

const needed = 'a pair of lengths, such as ["-3 mm", "3 mm"]'

/** Where something lies across the finger's width: pairs of lengths, from and to. */
export function slices(says: string) {
  return z.array(z.tuple([length, length], { error: needed }), { error: 'a list of pairs of lengths' }).describe(says)
}
