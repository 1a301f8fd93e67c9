import type * as z from 'zod'
import { WrongUse } from './terminal.ts'

/** What was typed after an option, held to the rule of the store. @throws WrongUse when it does not fit */
export function fitting<Value>(shape: z.ZodType<Value>, [option, typed]: readonly [string, string]): Value {
  const checked = shape.safeParse(typed)
  if (checked.success) return checked.data
  throw new WrongUse(`${option} "${typed}": ${checked.error.issues[0].message}`)
}
