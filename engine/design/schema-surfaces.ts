/** Keys that say how the shop leaves a surface. */
import * as z from 'zod'
import { limits } from '../numbers/limits.ts'
import { choice, length, pair } from './schema-leaves.ts'

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

/** `masked` of a part. */
export const masked = z
  .array(choice(['holes', 'edges', 'faces', 'threads'], 'What is kept free of the coating.'), {
    error: 'a list of holes, edges, faces, threads',
  })
  .max(4, { error: 'at most holes, edges, faces and threads' })
  .describe('What the coater masks: it keeps its size. Edges are those that stops run against, faces the flat sides.')

/** `racks` of a part. */
export const racks = z
  .array(pair, { error: 'a list of pairs of lengths' })
  .max(limits.racksOfPart, { error: `at most ${limits.racksOfPart} places` })
  .describe('Where the coater’s rack may touch the part: it stays bare there.')
