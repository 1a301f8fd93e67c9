import { expect, it } from 'vitest'
import { type FigureScope, figureNames } from './figure-names.ts'
import { readDesign } from './read-design.ts'
import { documentText } from './test-support/full-document.ts'

const scope: FigureScope = {
  drive: { kind: 'turn' },
  pins: [{ id: 'mcp' }, { id: 'pip' }],
  toggles: [{ id: 'distal' }],
  stops: [{ id: 'shelf' }],
  parts: [
    { id: 'mount', role: 'mount' },
    { id: 'topLink', role: 'link', name: 'Top link' },
  ],
  loadCases: [{ id: 'hook', name: 'Hook' }],
}

const unitOf = (id: string, changes: Partial<FigureScope> = {}) =>
  figureNames({ ...scope, ...changes }).find((figure) => figure.id === id)?.unit

it('names one figure for each pin, link, toggle and load case', () => {
  const ids = figureNames(scope).map((figure) => figure.id)
  expect(ids).toContain('open.joint.mcp.flexion')
  expect(ids).toContain('closed.joint.pip.flexion')
  expect(ids).toContain('motion.transmissionAngle.topLink.least')
  expect(ids).toContain('closed.toggle.distal.jamAngle')
  expect(ids).toContain('loadCase.hook.heldBy')
  expect(ids.filter((id) => /[<>]/.test(id))).toEqual([])
  expect(ids).toEqual([...new Set(ids)])
})

it('titles them with the names of the things', () => {
  const titles = figureNames(scope).map((figure) => figure.title)
  expect(titles).toContain('Least transmission angle of Top link')
  expect(titles).toContain('Effort to hold, Hook')
  expect(titles).toContain('Flexion at mcp, open')
})

it('takes names with signs that a replacement could misread', () => {
  const [named] = figureNames({ ...scope, loadCases: [{ id: 'a', name: '$& $1' }] }).filter((figure) =>
    figure.id.endsWith('.heldBy'),
  )
  expect(named.title).toBe('Held by, $& $1')
})

it('gives the drive and its effort the units of its kind', () => {
  expect(unitOf('closed.drive')).toBe('rad')
  expect(unitOf('loadCase.hook.effortToHold')).toBe('N·mm')
  for (const kind of ['pull', 'wrap'] as const) {
    expect(unitOf('closed.drive', { drive: { kind } })).toBe('mm')
    expect(unitOf('return.worstAt', { drive: { kind } })).toBe('mm')
    expect(unitOf('loadCase.hook.effortToHold', { drive: { kind } })).toBe('N')
  }
})

it('has release and keeper figures only where they are declared, in the unit of their port', () => {
  expect(unitOf('release.effort')).toBeUndefined()
  expect(unitOf('release.effort', { release: { port: { kind: 'force' } } })).toBe('N')
  expect(unitOf('release.effort', { release: { port: { kind: 'drive' } } })).toBe('N·mm')
  const keptBy = (kind: 'drive' | 'couple' | 'force') => ({ loadCases: [{ id: 'hook', keeper: { port: { kind } } }] })
  expect(unitOf('loadCase.hook.sustainingLoad')).toBeUndefined()
  expect(unitOf('loadCase.hook.keeperRatio')).toBeUndefined()
  expect(unitOf('loadCase.hook.sustainingLoad', keptBy('force'))).toBe('N')
  expect(unitOf('loadCase.hook.sustainingLoad', keptBy('couple'))).toBe('N·mm')
  expect(unitOf('loadCase.hook.keeperRatio', keptBy('drive'))).toBe('1')
})

it('has the tip only where one is watched', () => {
  expect(unitOf('closed.tip.x')).toBeUndefined()
  expect(unitOf('closed.tip.x', { tip: { part: 1, pad: 0 } })).toBe('mm')
})

it('takes a design as it is, and names every figure that its requirements ask for', () => {
  const design = readDesign(documentText()).value
  if (!design) throw new Error('the full document was refused')
  const ids = new Set(figureNames(design).map((figure) => figure.id))
  expect(design.requirements.filter((requirement) => !ids.has(requirement.figure))).toEqual([])
})
