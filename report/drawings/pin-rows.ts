/** Pins and springs as rows of the sheet that they share; pins that are made alike are one row. */
import { type Design, type DrawnPin, type PartsList, partsList, type ShopDesign, shownFigure } from '../../engine/index.ts'
import { diameterWords, lengthText, limitsWords } from './size-words.ts'
import { edgeWords, roughnessWords } from './surface-words.ts'
import type { TableColumn } from './table-ink.ts'

/** Columns of the pins; letters are those of the picture above them. */
export const pinColumns: readonly TableColumn[] = [
  { head: 'pins', most: 40 },
  { head: 'one each' },
  { head: 'd, as it goes in' },
  { head: 'd uncoated' },
  { head: 'l' },
  { head: 'e, both ends' },
  { head: 's' },
  { head: 'material', most: 30 },
  { head: 'coating', most: 30 },
]

/** One row for pins that are made alike, in the order of the parts list. */
export function pinRows(shop: ShopDesign): readonly (readonly string[])[] {
  const numbers = numbersOf(partsList(shop.variation.design))
  const rows = shop.pins.map((drawn) => ({ drawn, number: numbers.get(drawn.pin.id), cells: pinCells(drawn, shop) }))
  const alike = new Map<string, { readonly names: string[]; readonly cells: readonly string[] }>()
  for (const { drawn, number, cells } of rows) {
    const known = alike.get(cells.join('|')) ?? { names: [], cells }
    known.names.push(`${drawn.pin.id} (${number})`)
    alike.set(cells.join('|'), known)
  }
  return [...alike.values()].map(({ names, cells }) => [names.join(', '), String(names.length), ...cells])
}

function numbersOf({ items }: PartsList): ReadonlyMap<string, number> {
  return new Map(items.flatMap(({ kind, id, number }) => (kind === 'pin' ? [[id, number] as const] : [])))
}

function pinCells({ pin, diameter, beforeCoating }: DrawnPin, { variation }: ShopDesign): readonly string[] {
  const item = partsList(variation.design).items.find(({ kind, id }) => kind === 'pin' && id === pin.id)
  const length_mm = item?.size?.length_mm
  return [
    diameterWords(diameter),
    beforeCoating === undefined ? '' : `Ø${limitsWords(beforeCoating)}`,
    length_mm === undefined ? 'not known' : lengthText(length_mm),
    pin.edge === undefined ? 'not stated' : edgeWords(pin.edge),
    pin.roughness_mm === undefined ? 'not stated' : roughnessWords(pin.roughness_mm),
    pin.material?.name ?? 'not stated',
    pin.coating?.name ?? '',
  ]
}

/** Columns of the springs. */
export const springColumns: readonly TableColumn[] = [
  { head: 'spring' },
  { head: 'one each' },
  { head: 'wire', most: 40 },
  { head: 'wire Ø' },
  { head: 'outside Ø' },
  { head: 'coils' },
  { head: 'length or legs', most: 40 },
  { head: 'rate', most: 40 },
  { head: 'gives, as drawn', most: 40 },
]

/** One row a spring; what is not stated is a dash. */
export function springRows(design: Design): readonly (readonly string[])[] {
  const { items } = partsList(design)
  return design.springs.map((spring) => {
    const { id, kind, wire } = spring
    const item = items.find((one) => one.kind === 'spring' && one.id === id)
    const coils = wire === undefined ? '–' : number('bodyTurns' in wire ? wire.bodyTurns : wire.coils)
    return [
      `${kind} ${id} (${item?.number})`,
      String(item?.perFinger_count),
      wire === undefined ? 'not stated: wind by rate' : wire.material.name,
      wire === undefined ? '–' : lengthText(wire.wire_mm),
      wire === undefined ? '–' : lengthText(wire.mean_mm + wire.wire_mm),
      coils,
      ...(spring.kind === 'torsion' ? torsionCells(spring) : straightCells(spring)),
    ]
  })
}

type Spring = Design['springs'][number]
const number = (value: number): string => shownFigure(value, '1').number
const within = (ratio: number | undefined): string => (ratio === undefined ? '' : ` ±${lengthText(100 * ratio)} %`)

function torsionCells(spring: Extract<Spring, { readonly kind: 'torsion' }>): readonly string[] {
  const { wire, rate_Nmm_rad, preload_Nmm, within: off } = spring
  const perRadian = Number(shownFigure(1, 'rad', { digits: 15 }).number)
  return [
    wire === undefined ? '–' : `legs ${lengthText(wire.legs_mm)} together, on Ø${lengthText(wire.arbour_mm)}`,
    `${number(rate_Nmm_rad / perRadian)} N·mm/deg${within(off?.rate_ratio)}`,
    `${number(preload_Nmm)} N·mm${within(off?.preload_ratio)}`,
  ]
}

function straightCells(spring: Exclude<Spring, { readonly kind: 'torsion' }>): readonly string[] {
  const { freeLength_mm, rate_N_mm, initial_N, kind, within: off } = spring
  return [
    `${lengthText(freeLength_mm)} free`,
    `${number(rate_N_mm)} N/mm${within(off?.rate_ratio)}`,
    kind === 'tension' ? `opens at ${number(initial_N)} N${within(off?.initial_ratio)}` : '–',
  ]
}
