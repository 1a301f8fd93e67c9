import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { type Part, readDesign } from '../../engine/index.ts'
import { inventedDesign } from '../test-support/invented-finger.ts'
import { partBodies, pinBody } from './flat-body.ts'
import { stepFile } from './step-file.ts'
import { PIECES_OF_ROUND, stlFile } from './stl-file.ts'

type Corner = readonly number[]

function facetsIn(text = ''): readonly (readonly Corner[])[] {
  return [...text.matchAll(/outer loop\n(.*?)endloop/gs)].map(([, loop]) =>
    [...loop.matchAll(/vertex (\S+) (\S+) (\S+)/g)].map(([, ...values]) => values.map(Number)),
  )
}

/** By the divergence theorem: a sixth of a · (b × c), over all facets. */
function volumeOf(text: string | undefined): number {
  return facetsIn(text).reduce((sum, [a, b, c]) => {
    const cross = [b[1] * c[2] - b[2] * c[1], b[2] * c[0] - b[0] * c[2], b[0] * c[1] - b[1] * c[0]]
    return sum + (a[0] * cross[0] + a[1] * cross[1] + a[2] * cross[2]) / 6
  }, 0)
}

/** Sides that are not run along once either way. */
function openSides(text: string | undefined): readonly string[] {
  const sides = facetsIn(text).flatMap(([a, b, c]) => [`${a}|${b}`, `${b}|${c}`, `${c}|${a}`])
  const run = new Set(sides)
  return sides
    .filter((side) => !run.has(side.split('|').toReversed().join('|')))
    .concat(run.size === sides.length ? [] : ['twice'])
}

const mm = (x_mm: number, y_mm: number) => ({ x_mm, y_mm })
const plate: Part = {
  ...inventedDesign.parts[1],
  outline: [mm(0, 0), mm(30, 0), mm(30, 10), mm(16, 10), mm(15, 5), mm(14, 10), mm(0, 10)],
  across: [{ from_mm: -1, to_mm: 3 }],
  holes: [
    { id: 'round', at: mm(6, 4), diameter_mm: 3 },
    { id: 'slot', at: mm(23, 5), diameter_mm: 2, slot: { length_mm: 6, along_rad: 0.7 } },
    { id: 'third', at: mm(11, 4), diameter_mm: 3 },
  ],
}

/** Area of a round that is cut into straight pieces. */
const round = (radius: number) => (PIECES_OF_ROUND / 2) * radius * radius * Math.sin((2 * Math.PI) / PIECES_OF_ROUND)

describe('a solid of triangles', () => {
  it('is closed and has the volume of its outline less its openings, their rounds cut straight', () => {
    const text = stlFile('plate', partBodies(plate))
    // SOURCE hand: 300 less a notch of 2 × 5 / 2, two holes of 3, a slot of 2 by 6; times 4
    expect(volumeOf(text)).toBeCloseTo(4 * (295 - 2 * round(1.5) - round(1) - 12), 4)
    expect(openSides(text)).toEqual([])
  })

  it.each(['heron', 'kestrel'])('is closed for every part and pin of %s', (name) => {
    const { value } = readDesign(readFileSync(join(import.meta.dirname, `../../designs/${name}.json`), 'utf8'), name)
    // SOURCE property
    for (const part of value?.parts ?? []) expect([part.id, ...openSides(stlFile(part.id, partBodies(part)))]).toEqual([part.id])
    for (const pin of value?.pins ?? []) expect(openSides(stlFile(pin.id, [pinBody(pin, 20)]))).toEqual([])
  })

  it('is not made where holes run into each other or an outline crosses itself', () => {
    const holes = [plate.holes[0], { ...plate.holes[0], at: mm(7, 5) }]
    // SOURCE property
    expect(stlFile('plate', partBodies({ ...plate, holes }))).toBeUndefined()
    expect(stlFile('bow', partBodies({ ...plate, holes: [], outline: [mm(0, 0), mm(9, 9), mm(9, 0), mm(0, 4)] }))).toBeUndefined()
  })

  it('has the volume that another kernel finds in the STEP file, but for what is cut off its rounds', async () => {
    const wasm = createRequire(import.meta.url).resolve('replicad-opencascadejs/wasm')
    const { default: start } = await import('replicad-opencascadejs')
    const kernel = await import('replicad')
    kernel.setOC(await start({ locateFile: () => wasm }))
    const bodies = partBodies(plate)
    const solid = await kernel.importSTEP(new Blob([stepFile('plate', bodies)]))
    const { volume } = kernel.measureShapeVolumeProperties(solid as Parameters<typeof kernel.measureShapeVolumeProperties>[0])
    // SOURCE other-method: a geometric kernel that reads STEP files (replicad, on OpenCascade)
    const cutOff = (radius: number) => Math.PI * radius ** 2 - round(radius)
    expect(volumeOf(stlFile('plate', bodies)) - volume).toBeCloseTo(4 * (2 * cutOff(1.5) + cutOff(1)), 4)
  })
})
