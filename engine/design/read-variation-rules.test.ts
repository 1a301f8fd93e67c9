import { expect, it } from 'vitest'
import { readDesign } from './read-design.ts'
import { type Changes, documentText } from './test-support/full-document.ts'

const refused = (changes: Changes) =>
  (readDesign(documentText(changes)).problems ?? []).map(({ place, code }) => `${place}: ${code}`)

it.each<[string, Changes, string[]]>([
  ['a general tolerance of part 2', { generalTolerance: 'ISO 2768-mK' }, ['generalTolerance: wrong value']],
  ['no such class', { generalTolerance: 'ISO 2768-x' }, ['generalTolerance: wrong value']],
  ['a capability without a law', { 'variation.sizes.law': undefined }, ['variation.sizes.capability: wrong value']],
  ['a capability of a uniform law', { 'variation.sizes.law': 'uniform' }, ['variation.sizes.capability: wrong value']],
  ['a capability of nothing', { 'variation.sizes.capability': 0 }, ['variation.sizes.capability: wrong value']],
  ['a capability of eleven', { 'variation.sizes.capability': 11 }, ['variation.sizes.capability: wrong value']],
  ['an unknown law', { 'variation.positions': 'even' }, ['variation.positions: wrong value']],
  [
    'the stronger wearer first',
    { 'variation.wearers.effortMost': { from: '3 N*m', to: '2 N*m' } },
    ['variation.wearers.effortMost: wrong order'],
  ],
  ['wearers and no wearer', { 'drive.effortMost': undefined }, ['variation.wearers.effortMost: missing']],
  [
    'a wearer who pulls what has to be turned',
    { 'variation.wearers.effortMost.from': '3 N' },
    ['variation.wearers.effortMost.from: wrong unit'],
  ],
  [
    'measured sizes beside a law',
    { 'parts.mount.holes.base.tolerance.law': 'normal' },
    ['parts.mount.holes.base.tolerance: key too many'],
  ],
  [
    'one measured size',
    { 'parts.mount.holes.base.tolerance.measured': ['3 mm'] },
    ['parts.mount.holes.base.tolerance.measured: wrong value'],
  ],
  [
    'a measured force',
    { 'parts.mount.holes.base.tolerance.measured.1': '3 N' },
    ['parts.mount.holes.base.tolerance.measured.1: wrong unit'],
  ],
  ['a bonus without a zone', { 'parts.proximal.holes.mcp.position': undefined }, ['parts.proximal.holes.mcp.position: missing']],
  ['a datum with a zone', { 'parts.proximal.holes.pip.position': '0.1 mm' }, ['parts.proximal.holes.pip.position: wrong value']],
  ['two datums', { 'parts.proximal.holes.top.datum': true }, ['parts.proximal.holes: too many']],
  ['a profile below nothing', { 'parts.middle.edges.shelf.profile': '-1 um' }, ['parts.middle.edges.shelf.profile: too small']],
  ['a spring that may be away', { 'springs.return.within.rate': '100 %' }, ['springs.return.within.rate: too large']],
  ['a preload of a spring without one', { 'springs.push.within.preload': 0.1 }, ['springs.push.within.preload: key too many']],
  ['a zone that the standard does not have at the size', { 'pins.mcp.tolerance': 't6' }, ['pins.mcp.tolerance: unknown name']],
  [
    'a zone on a large size',
    { 'dimensions.proximalLength': { value: '50.1 mm', tolerance: 'h6' } },
    ['dimensions.proximalLength.tolerance: too large'],
  ],
  ['a class of fit that is not there', { 'pins.mcp.tolerance': 'RC10' }, ['pins.mcp.tolerance: unknown name']],
  [
    'a class of fit on a dimension',
    { 'dimensions.pinDiameter.tolerance': 'RC4' },
    ['dimensions.pinDiameter.tolerance: wrong value'],
  ],
])('refuses %s', (_, changes, problems) => {
  expect(refused(changes)).toEqual(problems)
})

it('takes what stands just inside', () => {
  const changes = {
    'variation.sizes.capability': 10,
    'springs.return.within.rate': '99 %',
    'parts.middle.edges.shelf.profile': '0 mm',
  }
  expect(refused({ ...changes, 'dimensions.proximalLength': { value: '50 mm', tolerance: 'h6' } })).toEqual([])
  // SOURCE hand (a pin of 3 mm is 0.118 in: the class has its first band)
  expect(refused({ 'pins.mcp.tolerance': 'RC4' })).toEqual([])
})

it('names the zones that exist', () => {
  const [problem] = readDesign(documentText({ 'pins.mcp.tolerance': 't6' })).problems ?? []
  // SOURCE standard ISO 286-1:2010, tables of deviations, from memory: t, v and y begin above 3 mm
  expect(problem.needed).toMatch(/: a6, b6, c6, .* s6, u6, x6, z6, .*js6$/)
  expect(problem.found).toBe('“t6” on 3 mm')
})
