import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, it } from 'vitest'
import { evaluate, readShopDesign } from '../../engine/index.ts'
import { typesetterAt } from '../../typesetting/index.ts'
import { svgText } from '../drawing/svg.ts'
import { drawingSheets, drawingsJob, usualDrawings } from './drawing-sheets.ts'
import { faceDatum } from './face-datum.ts'
import { type Box, boxesMeet, boxOf, type Ink, isTaken, lineMeets, type Words, widthOf } from './ink.ts'
import { paperNames } from './paper.ts'
import { acrossOnPaper, type Projection } from './part-views.ts'
import { sheetShape } from './sheet-file.ts'
import { diameterWords, lengthText, limitsWords, sizeWords } from './size-words.ts'

const home = join(import.meta.dirname, '../..')
const textOf = (name: string) => readFileSync(join(home, `designs/${name}.json`), 'utf8')
const shopFrom = (text: string) => {
  const { value, problems } = readShopDesign(text)
  if (value === undefined) throw new Error(JSON.stringify(problems))
  return value
}
const shopOf = (name: string) => shopFrom(textOf(name))
const shops = ['heron', 'heron-jams', 'heron-stop-at-mcp', 'kestrel'].map(shopOf)
/** Evaluated once: a paper changes nothing of it. */
const evaluations = shops.map(({ variation }) => evaluate(variation.design))
const usualSheets = (index: number) => drawingSheets(shops[index], { ...usualDrawings, evaluation: evaluations[index] })

/** Words over which something else lies, as `these: those`. */
function covered(ink: readonly Ink[], paper: Box): readonly string[] {
  return ink
    .filter((one): one is Words => one.kind === 'words')
    .filter((words) => {
      const box = boxOf(words)
      const isInside = box.left > paper.left && box.top > paper.top && box.right < paper.right && box.bottom < paper.bottom
      return (
        !isInside ||
        isTaken(
          box,
          ink.filter((one) => one !== words),
        )
      )
    })
    .map(({ words }) => words)
}

/** As a reader of PDF gives them back: blanks are places, not letters. */
const plain = (words: string): string => words.normalize('NFKC').replaceAll(/\s/g, '')

describe('the drawings of every example', () => {
  it.each(paperNames)('have every part on a sheet and nothing over any words, on %s', (paper) => {
    for (const [index, shop] of shops.entries()) {
      const { sheets, left } = drawingSheets(shop, { paper, projection: 'first-angle', evaluation: evaluations[index] })
      // SOURCE property
      expect(left).toEqual([])
      expect(sheets.length).toBeGreaterThanOrEqual(shop.parts.length)
      for (const { name, paper: on, ink } of sheets) {
        // SOURCE property: no part of these is larger than a sheet, so none is drawn smaller than it is
        expect([name, ...ink.filter((one) => one.kind === 'words' && /^1:[25]$/.test(one.words))]).toEqual([name])
        const frame = { left: 20, top: 10, right: on.width - 10, bottom: on.height - 10 }
        expect([name, ...covered(ink, frame)]).toEqual([name])
      }
    }
  })

  it('have words that take no more room than was kept for them, read back from the PDF', async () => {
    const { sheets } = usualSheets(0)
    const [pdf] = await typesetterAt(home)([drawingsJob('heron', sheets)])
    // SOURCE other-method: pdfjs-dist measures each text with the face that is in the file; 72 / 25.4 points a millimetre
    const document = await getDocument({ data: pdf, verbosity: 0 }).promise
    expect(document.numPages).toBe(sheets.length)
    for (const [index, { ink }] of sheets.entries()) {
      const { items } = await (await document.getPage(index + 1)).getTextContent()
      const pieces = items.flatMap((item) => ('str' in item && item.str.trim() !== '' ? [item] : []))
      const said = ink.filter((one) => one.kind === 'words')
      for (const { words, size, turned } of said) {
        const wanted = plain(words)
        const own: typeof pieces = []
        while (plain(own.map(({ str }) => str).join('')).length < wanted.length) own.push(...pieces.splice(0, 1))
        expect(plain(own.map(({ str }) => str).join(''))).toBe(wanted)
        const begins = own.map(({ transform }) => transform[turned ? 5 : 4])
        const ends = own.map(({ width }, piece) => begins[piece] + width)
        expect(((Math.max(...ends) - Math.min(...begins)) * 25.4) / 72).toBeLessThan(widthOf(words, size))
      }
      expect(pieces).toEqual([])
    }
  })

  it('write the limits of fits, framed places and sizes before coating', () => {
    const [mount] = usualSheets(0).sheets
    const words = mount.ink.flatMap((one) => (one.kind === 'words' ? [one.words] : []))
    // SOURCE hand: 3.012 ±0.006; the film of 11.05 to 14.95 µm, half of it inwards, 0.9 of it in a bore: 3.006 + 0.01346 and 3.018 + 0.00995, inwards
    expect(words).toEqual(expect.arrayContaining(['Ø3.006 / 3.018', 'uncoated Ø3.02 / 3.027', '6.47', 'Ø0.02', 'A', 'B']))
  })

  it('draw threads in both views, and give spring and screws a balloon', () => {
    const { sheets } = usualSheets(0)
    const inkOf = (name: string) => sheets.find((sheet) => sheet.name === name)?.ink ?? []
    const words = inkOf('part-mount').flatMap((one) => (one.kind === 'words' ? [one.words] : []))
    expect(words).toEqual(expect.arrayContaining(['thread front', 'thread rear']))
    const hidden = inkOf('part-mount').filter((one) => one.kind === 'line' && one.type === 'hidden')
    // SOURCE hand: three lines a thread: two on the face, and beside each other in two slices seen along x, once for each of the two screws; of
    // the holes two lines each in two slices
    expect(hidden).toHaveLength(3 * (2 + 4) + 2 * 2 * 2)
    const balloons = inkOf('assembly').filter((one) => one.kind === 'circle' && one.radius === 3.6)
    // SOURCE hand: 6 parts, 7 pins, a spring, 2 kinds of screws
    expect(balloons).toHaveLength(6 + 7 + 1 + 2)
  })

  it('name holes by letters in a table where there are too many for blocks, nothing over any words', () => {
    const document = JSON.parse(textOf('heron'))
    const many = [-12.6, -10.4, -8.2, -6].flatMap((x) =>
      [-4.9, -2.7].map((y) => [`lightening${-x}${-y}`.replaceAll('.', '_'), x, y] as const),
    )
    for (const [id, x, y] of many) {
      document.parts.mount.holes[id] = { x: `${x} mm`, y: `${y} mm`, diameter: '1.2 mm', position: '0.1 mm' }
    }
    document.screws = undefined
    document.parts.mount.masked = ['holes.mcp']
    const { sheets, left } = drawingSheets(shopFrom(JSON.stringify(document)), { ...usualDrawings, evaluation: evaluations[0] })
    expect(left).toEqual([])
    for (const name of ['part-mount', 'coating-mount']) {
      const sheet = sheets.find((one) => one.name === name)
      const { ink, paper } = sheet ?? { ink: [], paper: { width: 0, height: 0 } }
      const words = ink.flatMap((one) => (one.kind === 'words' ? [one.words] : []))
      // SOURCE hand: ten holes are a to j
      expect(words.filter((one) => /^[a-j](, masked)?$/.test(one)).length).toBeGreaterThanOrEqual(10)
      expect(covered(ink, { left: 20, top: 10, right: paper.width - 10, bottom: paper.height - 10 })).toEqual([])
    }
  })

  it('seen from the right have on the left what lies nearest to who looks at the face, and there is datum A', () => {
    const slices = [
      { from_mm: -5, to_mm: -1 },
      { from_mm: 1, to_mm: 3 },
    ]
    const across = (projection: Projection) => acrossOnPaper(slices, { ratio: 2, left: 100, projection })
    // SOURCE standard: ISO 5456-2, third-angle and first-angle projection, from memory
    expect([3, -5].map(across('third-angle'))).toEqual([100, 116])
    expect([3, -5].map(across('first-angle'))).toEqual([116, 100])
    for (const [projection, side] of [
      ['third-angle', -1],
      ['first-angle', 1],
    ] as const) {
      const ink = faceDatum({ across: across(projection), slices, projection, y: 50 })
      const letter = ink.find((one) => one.kind === 'words')
      expect(Math.sign((letter?.at.x ?? 0) - across(projection)(3))).toBe(side)
    }
  })

  it('tell pins and springs on one sheet, and the coater every bare place', () => {
    const { sheets } = usualSheets(0)
    const wordsOn = (name: string) =>
      sheets.flatMap((sheet) =>
        sheet.name === name ? sheet.ink.flatMap((one) => (one.kind === 'words' ? [one.words] : [])) : [],
      )
    // SOURCE hand: from face to face of what they join, −10 to 10, −5.5 to 5.5 and −11 to 11 mm; h7 of 3 mm is 0 to −10 µm (ISO 286-2, from memory), of
    // which the film of 11 to 13 µm on either side takes 26 at the most and 22 at the least
    expect(wordsOn('pins')).toEqual(
      expect.arrayContaining(['mcp (7), pip (8), dip (9)', '20', '11', '22', 'Ø2.968 / 2.974', '−0.1 / −0.3', 'Ra 0.4']),
    )
    // SOURCE hand: as typed in the design
    expect(wordsOn('coating-mount')).toEqual(expect.arrayContaining(['Masked, it stays bare: the threads.', 'rack 1', 'rack 2']))
    expect(wordsOn('coating-pins')).toContain('Cure: 150 °C for 120 min.')
    expect(sheets.map(({ name }) => name)).not.toContain('coating-topLink')
  })

  it('show the coater each face that is masked by its name, with a line beside it', () => {
    const masked = ['holes.mcp', 'threads.rear', 'outline', 'faces.back']
    const shop = shopFrom(textOf('heron').replace('["threads"]', JSON.stringify(masked)))
    const sheet = drawingSheets(shop, { ...usualDrawings, evaluation: evaluations[0] }).sheets.find(
      ({ name }) => name === 'coating-mount',
    )
    const ink = sheet?.ink ?? []
    const words = ink.flatMap((one) => (one.kind === 'words' ? [one.words] : []))
    // SOURCE hand: as typed; of two holes and two threads one each; six corners have six sides, a hole has a ring, a thread has a mouth
    expect(words).toEqual(
      expect.arrayContaining(['mcp, masked', 'base', 'thread rear, masked', 'thread front', 'the face behind is masked']),
    )
    expect(ink.filter((one) => 'type' in one && one.type === 'apart')).toHaveLength(6 + 1 + 1)
    const frame = { left: 20, top: 10, right: 287, bottom: 200 }
    expect(covered(ink, frame)).toEqual([])
  })

  it('are the same bytes for the same design', () => {
    const again = shopOf('kestrel')
    // SOURCE property
    const text = (shop: typeof again) => drawingSheets(shop).sheets.map((sheet) => svgText(sheetShape(sheet)))
    expect(text(again)).toEqual(usualSheets(3).sheets.map((sheet) => svgText(sheetShape(sheet))))
  })
})

describe('sizes in words', () => {
  it('carry their limits, rounded inwards', () => {
    // SOURCE hand
    expect(lengthText(-0.0004)).toBe('0')
    expect(sizeWords({ nominal_mm: 24.507, limits: { least: 24.497, most: 24.517 } })).toBe('24.507 ±0.01')
    expect(sizeWords({ nominal_mm: 3, limits: { least: 3, most: 3.01 } })).toBe('3 / 3.01')
    expect(limitsWords({ least: 3.0194, most: 3.0279 })).toBe('3.02 / 3.027')
    expect(diameterWords({ nominal_mm: 3, limits: { least: 2.99, most: 3 }, zone: 'h7' })).toBe('Ø2.99 / 3 (h7)')
  })
})

describe('whether something lies over words', () => {
  it('is seen where it does, and not beside it', () => {
    const box = { left: 0, top: 0, right: 10, bottom: 4 }
    // SOURCE hand
    expect(lineMeets({ from: { x: -5, y: -5 }, to: { x: 20, y: 9 } }, box)).toBe(true)
    expect(lineMeets({ from: { x: -5, y: 4.1 }, to: { x: 20, y: 4.1 } }, box)).toBe(false)
    expect(boxesMeet(box, { left: 10.1, top: 0, right: 12, bottom: 4 })).toBe(false)
    expect(isTaken(box, [{ kind: 'circle', at: { x: 5, y: 2 }, radius: 30, type: 'narrow' }])).toBe(false)
  })
})
