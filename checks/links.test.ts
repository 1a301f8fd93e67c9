import { existsSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { expect, it } from 'vitest'
import { projectFiles, root, type SourceFile } from './source-file.ts'

const LINK = /\]\(([^)\s#]+)[^)]*\)/g

it('every link of a document leads to a file of the project', () => {
  const documents = projectFiles().filter((file) => file.path.endsWith('.md'))
  expect(documents.length).toBeGreaterThan(0)
  expect(documents.flatMap(brokenLinks)).toEqual([])
})

it('a link that leads nowhere is seen', () => {
  expect(brokenLinks({ path: 'docs/a.md', text: 'see [it](gone.md) and [this](../LICENSE#top)' })).toEqual(['docs/a.md: gone.md'])
})

function brokenLinks({ path, text }: SourceFile): readonly string[] {
  const targets = [...text.matchAll(LINK)].map((match) => match[1]).filter((target) => !/^[a-z]+:/.test(target))
  return targets
    .filter((target) => !existsSync(join(root, normalize(join(dirname(path), target)))))
    .map((target) => `${path}: ${target}`)
}
