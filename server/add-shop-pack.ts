import type { Hono } from 'hono'
import * as z from 'zod'
import { readShopDesign } from '../engine/index.ts'
import { newName } from '../records/index.ts'
import { paperNames, usualDrawings } from '../report/index.ts'
import type { Typesetter } from '../typesetting/index.ts'
import { bodyAtMost } from './body-limit.ts'
import { documentLimit_bytes, documentText } from './document-text.ts'
import { LINES_TYPE, linesOfWork } from './lines-of-work.ts'
import { shopPack } from './shop-pack.ts'

const drawingsAsked = z.object({
  paper: z.enum(paperNames).default(usualDrawings.paper),
  views: z.enum(['first-angle', 'third-angle']).default(usualDrawings.projection),
  revision: z
    .string()
    .regex(/^[\w., -]{1,20}$/)
    .optional(),
})

/**
 * `POST /api/shop-pack?name=…&paper=…&views=…&revision=…` with a design file as `application/json` → the pack as a zip; what is not in it stands in the header
 * `X-Left-Out`, a JSON list. With `Accept: application/x-ndjson` a line for each step
 * comes before, `{ doing, done, of, remaining_s }`, and the pack in the last one, `{ zip, left }`, in base64; who stops reading stops the work. Status 422 with `{ problems }` when the design is refused.
 */
export function addShopPack(app: Hono, typeset: Typesetter | undefined): void {
  app.post('/api/shop-pack', bodyAtMost(documentLimit_bytes), async (context) => {
    const type = context.req.header('content-type') ?? ''
    if (!/^application\/json\s*(;|$)/i.test(type)) return context.json({ error: 'send a design file as application/json' }, 415)
    const name = newName.safeParse(context.req.query('name') ?? 'design')
    if (!name.success)
      return context.json({ error: 'name: letters, digits, space, point, dash and underscore, at most 100' }, 400)
    const drawn = drawingsAsked.safeParse(context.req.query())
    if (!drawn.success)
      return context.json(
        {
          error: `paper: ${paperNames.join(', ')}; views: first-angle or third-angle; revision: at most 20 letters, digits, points, commas, dashes and blanks`,
        },
        400,
      )
    const text = documentText(new Uint8Array(await context.req.arrayBuffer()))
    const read = text.problems === undefined ? readShopDesign(text.value, name.data) : text
    if (read.problems !== undefined) return context.json({ problems: read.problems }, 422)
    const { paper, views: projection, revision } = drawn.data
    const asked = { typeset, drawings: { paper, projection, ...(revision !== undefined && { revision }) } }
    if (context.req.header('accept') === LINES_TYPE) {
      return linesOfWork(async (onStep, signal) => {
        const { zip, left } = await shopPack(read.value, { ...asked, onStep, signal })
        return { zip: Buffer.from(zip).toString('base64'), left }
      })
    }
    const { zip, left } = await shopPack(read.value, asked)
    return context.body(zip, 200, { 'Content-Type': 'application/zip', 'X-Left-Out': encodeURIComponent(JSON.stringify(left)) })
  })
}
