// `npm run build`: the command into build/command, the page into build/page.
import { join } from 'node:path'
import { buildOrEnd } from './build.mjs'

const built = await buildOrEnd(join(import.meta.dirname, '..'))
console.log(built ? 'Built the command and the page.' : 'Nothing has changed since the last build.')
