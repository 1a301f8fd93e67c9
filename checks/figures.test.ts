import { basename } from 'node:path'
import { describe, expect, it } from 'vitest'
import { evaluate, type Figure, figureNames, readDesign, type Working, workingsOf } from '../engine/index.ts'
import { projectFiles } from './source-file.ts'

const designs = projectFiles().filter((file) => /^designs\/[^/]+\.json$/.test(file.path))

describe.each(designs)('every figure of $path', ({ path, text }) => {
  const design = readDesign(text, basename(path, '.json')).value
  if (design === undefined) throw new Error(`${path} is refused`)
  const { figures } = evaluate(design)
  const workings = workingsOf(design)
  const catalogue = new Map(figureNames(design).map((name) => [name.id, name]))

  it('stands in the catalogue under its unit and title, once', () => {
    expect(figures.length).toBeGreaterThan(0)
    const named = figures.map(({ id, unit, title }) => ({ id, unit, title }))
    expect(named).toEqual(figures.map(({ id }) => catalogue.get(id)))
    expect(new Set(figures.map((figure) => figure.id)).size).toBe(figures.length)
  })

  it('has a working: a method, a formula or inputs, a source', () => {
    expect([...workings.keys()]).toEqual(figures.map(({ id }) => id))
    expect(figures.flatMap((figure) => gapsOfWorking(figure, workings.get(figure.id)))).toEqual([])
  })

  it('has a finite value, or says why it has none', () => {
    expect(figures.filter(hasNeitherValueNorReason).map((figure) => figure.id)).toEqual([])
  })
})

describe('a figure that lacks something is seen', () => {
  const bare: Figure = {
    id: 'bare',
    title: 'Bare',
    unit: '1',
    value: Number.NaN,
  }
  const empty: Working = { method: '', formulas: [], inputs: [], steps: [], source: ' ' }

  it('without a working or a value', () => {
    expect(gapsOfWorking(bare, undefined)).toEqual(['bare: no working'])
    expect(gapsOfWorking(bare, empty)).toEqual(['bare: no method', 'bare: no formula and no inputs', 'bare: no source'])
    expect(hasNeitherValueNorReason(bare)).toBe(true)
  })
})

/** A figure that does not exist has nothing that went into it; one that does rests on a formula, on inputs, or on both. */
function gapsOfWorking({ id, value }: Figure, working: Working | undefined): readonly string[] {
  if (working === undefined) return [`${id}: no working`]
  const gaps = [
    ...(working.method.trim() === '' ? ['method'] : []),
    ...(value !== undefined && working.formulas.length + working.inputs.length === 0 ? ['formula and no inputs'] : []),
    ...(working.source.trim() === '' ? ['source'] : []),
  ]
  return gaps.map((gap) => `${id}: no ${gap}`)
}

function hasNeitherValueNorReason({ value, why }: Figure): boolean {
  return value === undefined ? why === undefined || why === '' : typeof value === 'number' && !Number.isFinite(value)
}
