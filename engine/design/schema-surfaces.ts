/** Keys that say how the shop leaves a surface. */
import * as z from 'zod'
import { limits } from '../numbers/limits.ts'
import { length, pair } from './schema-leaves.ts'
import { meant } from './schema-meaning.ts'

const signed = 'signed after ISO 13715: − for metal taken off, + for metal that may stand over'

const most = (whose: string) => length.optional().describe(`${whose}, ${signed}: at most so much.`)
const least = length.optional().describe('The same, at least so much. Default: none, a sharp edge will do.')

/** `roughness`. */
export const roughness = length.optional().describe('Roughness Ra, such as 1.6 um. Left out: not stated.')

/** `edge`, `edgeFrom` and `roughness` of a hole or of a pin. */
export const surface = {
  edge: most('Both its edges'),
  edgeFrom: least,
  roughness,
}

/** Edges and roughness of a part, where a hole or an edge does not state its own. */
export const surfacesOfPart = {
  outsideEdges: most('Edges all around'),
  outsideEdgesFrom: least,
  insideEdges: most('Edges in inside corners'),
  insideEdgesFrom: least,
  roughness,
}

const facePattern = /^(outline|(holes|edges|faces|threads)(\.[A-Za-z][A-Za-z0-9_-]{0,39})?)$/
const faceNeeded = 'holes, edges, outline, faces or threads, or one of them by its name, such as holes.mcp or faces.front'

/** `masked` of a part. */
export const masked = z
  .array(meant(z.string({ error: faceNeeded }).regex(facePattern, { error: faceNeeded }), { is: 'face' }).describe(faceNeeded), {
    error: 'a list of faces, such as ["threads", "holes.mcp"]',
  })
  .max(limits.maskedOfPart, { error: `at most ${limits.maskedOfPart} faces` })
  .describe(
    'Faces that the coater masks: they keep their size. Edges are those that stops run against, the outline is the rest of the narrow side all around, the front is the flat side that the drawing shows, the back the other.',
  )

/** `racks` of a part. */
export const racks = z
  .array(pair, { error: 'a list of pairs of lengths' })
  .max(limits.racksOfPart, { error: `at most ${limits.racksOfPart} places` })
  .describe('Where the coater’s rack may touch the part: it stays bare there.')
