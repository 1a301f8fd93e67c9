/** TEST SUPPORT. Builds the page once for all of its tests, unless it is that of the last build. */
import { join } from 'node:path'
import { build } from '../../scripts/build.mjs'

const root = join(import.meta.dirname, '../..')

/** Where the built page is. */
export const builtPage = join(root, 'build/page')

/** Run before the first test. */
export async function setup(): Promise<void> {
  await build(root)
}
