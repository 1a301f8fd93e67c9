// `npm run build`: the command into build/command, the page into build/page.
import { join } from 'node:path'
import { build } from './build.mjs'

const built = await build(join(import.meta.dirname, '..'))
console.log(built ? 'Built the command and the page.' : 'Nothing has changed since the last build.')
