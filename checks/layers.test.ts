import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { isCode } from './house-rule.ts'
import { LAYERED, seeLayers } from './layers.ts'
import { projectFiles, root } from './source-file.ts'

describe('imports go one way', () => {
  it('in the whole project, with every code file read', async () => {
    const seen = await seeLayers(root)
    const files = projectFiles().map((file) => file.path)
    const code = files.filter((path) => isCode(path) && LAYERED.some((folder) => path.startsWith(`${folder}/`)))
    expect(code.length).toBeGreaterThan(20) // SOURCE hand (the engine alone has more files; fewer means that the reader saw nothing)
    expect(code.filter((path) => !seen.modules.includes(path))).toEqual([])
    expect(seen.violations).toEqual([])
  })
})

describe('an import that breaks a rule is seen', () => {
  let folder: string

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'layers-'))
    for (const [path, text] of Object.entries(BROKEN)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true })
      writeFileSync(join(folder, path), text)
    }
  })

  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  it.each([
    'engine/numbers/sum.ts → engine/motion/path.ts: numbers imports only what stands below it',
    'engine/design/read.ts → engine/index.ts: design imports only what stands below it',
    'engine/design/read.ts → node:fs: the engine and the report use no module of Node',
    'engine/motion/path.ts → server/index.ts: the engine imports only itself and its tables',
    'report/index.ts → engine/motion/path.ts: report imports only the doors below it',
    'records/index.ts → report/index.ts: records imports only the doors below it',
    'typesetting/index.ts → server/index.ts: typesetting imports only the doors below it',
    'server/index.ts → better-sqlite3: only the records speak to a database',
    'page/main.ts → server/index.ts: page imports only the doors below it',
    'command-line/main.ts → server/secret.ts: command-line imports only the doors below it',
    'server/index.ts → server/secret.ts: no import goes round in a circle',
    'server/secret.ts → ./gone.ts: every import is found',
  ])('%s', async (violation) => {
    const seen = await seeLayers(folder)
    expect(seen.violations.map((text) => text.replace('→ fs:', '→ node:fs:'))).toContain(violation)
  })
})

/** A small project that breaks each rule once. */
const BROKEN = {
  'engine/index.ts': "export * from './design/read.ts'\n",
  'engine/numbers/sum.ts': "import '../motion/path.ts'\n",
  'engine/design/read.ts': "import 'node:fs'\nimport '../index.ts'\nexport const read = 1\n",
  'engine/motion/path.ts': "import '../../server/index.ts'\n",
  'report/index.ts': "import '../engine/motion/path.ts'\n",
  'records/index.ts': "import '../report/index.ts'\n",
  'page/main.ts': "import '../server/index.ts'\n",
  'command-line/main.ts': "import '../server/secret.ts'\n",
  'typesetting/index.ts': "import '../server/index.ts'\n",
  'server/index.ts': "import './secret.ts'\nimport 'better-sqlite3'\n",
  'server/secret.ts': "import './index.ts'\nimport './gone.ts'\n",
}
