import { describe, expect, it } from 'vitest'
import { exportsSayWhatTheyMean } from './docstrings.ts'
import { expectedNumbersHaveASource } from './expected-numbers.ts'
import { filesAreNamedByContent } from './file-names.ts'
import { forbiddenText } from './forbidden-text.ts'
import { functionsAreShort } from './function-length.ts'
import { projectFiles } from './source-file.ts'

const RULES = [expectedNumbersHaveASource, exportsSayWhatTheyMean, functionsAreShort, filesAreNamedByContent, ...forbiddenText]

const files = projectFiles()

describe.each(RULES)('$title', (rule) => {
  it('holds in the whole project', () => {
    const judged = files.filter((file) => rule.appliesTo(file.path))
    expect(judged.length).toBeGreaterThan(0)
    expect(judged.flatMap((file) => rule.faults(file))).toEqual([])
  })

  it('is seen to be broken where it is broken', () => {
    expect(rule.appliesTo(rule.broken.path)).toBe(true)
    expect(rule.faults(rule.broken)).toHaveLength(1)
  })

  it('is not seen broken where it is kept', () => {
    expect(rule.appliesTo(rule.kept.path)).toBe(true)
    expect(rule.faults(rule.kept)).toEqual([])
  })
})
