import * as z from 'zod'
import { storeLimits } from '../limits.ts'

/**
 * What a picture of each kind begins with, in base64. SOURCE standard: the signature of PNG (ISO/IEC 15948, 5.2: 89 50 4E 47 0D 0A 1A 0A) and the
 * marker with which JPEG begins (ITU-T T.81, B.1.1.3: FF D8 and a further FF), from memory. Three bytes are four letters.
 */
const BEGINS = { 'image/png': 'iVBORw0KGgo', 'image/jpeg': '/9j/' } as const

/** A photo in base64: it begins as such a picture does, and is small enough to be kept. Whether all of it can be seen is not looked into. */
export const photo = z
  .strictObject({
    type: z.enum(['image/jpeg', 'image/png']),
    base64: z.base64().max(storeLimits.photoLetters, 'has more than 2 MB; make the picture smaller'),
  })
  .refine(({ type, base64 }) => base64.startsWith(BEGINS[type]), 'is no picture of the kind that it says: JPEG or PNG')
