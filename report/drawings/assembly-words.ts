/** What stands on the assembly sheet in words: the order of putting together, torques, where it turns, and the check that it closes and lets go. */
import { type Design, type Evaluation, type PartsList, showFigure } from '../../engine/index.ts'
import { greasedPlaces } from '../making/greased-places.ts'
import { figureOf } from '../tables/figure-lookup.ts'
import { lengthText } from './size-words.ts'
import { placeText } from './surface-words.ts'

/** A heading with its lines. */
export interface WordsBlock {
  readonly heading: string
  readonly lines: readonly string[]
}

/** The blocks in the order in which a bench asks for them. */
export function assemblyWords(evaluation: Evaluation, list: PartsList): readonly WordsBlock[] {
  const { design } = evaluation
  return [
    { heading: 'Order of assembly', lines: orderLines(design, numbersOf(list)) },
    { heading: 'Screws', lines: screwLines(design, numbersOf(list)) },
    { heading: 'Where it turns', lines: turningLines(design) },
    { heading: 'Grease', lines: greaseLines(design) },
    { heading: 'Closes and lets go: try every finger before it leaves the bench', lines: checkLines(evaluation) },
  ].filter(({ lines }) => lines.length > 0)
}

type Numbers = (kind: string, id: string) => number

function numbersOf({ items }: PartsList): Numbers {
  const numbers = new Map(items.map(({ kind, id, number }) => [`${kind} ${id}`, number]))
  return (kind, id) => numbers.get(`${kind} ${id}`) ?? 0
}

/** From the mount outwards: a pin is put in as soon as one of its parts is there. Two loops end when no pin is left that reaches. */
function orderLines({ parts, pins, springs }: Design, number: Numbers): readonly string[] {
  const there = new Set([0])
  const left = [...pins]
  const lines = [`Lay ${parts[0].name} (${number('part', parts[0].id)}) down.`]
  while (left.length > 0) {
    const next = left.findIndex(({ joins }) => joins.some(({ part }) => there.has(part)))
    const [pin] = left.splice(Math.max(0, next), 1)
    for (const { part } of pin.joins) there.add(part)
    const joined = pin.joins.map(({ part }) => `${parts[part].name} (${number('part', parts[part].id)})`)
    lines.push(`Pin ${pin.id} (${number('pin', pin.id)}): joins ${joined.join(' and ')}, fast in ${parts[pin.fixedIn].name}.`)
  }
  return [...lines, ...springs.map(({ id, kind }) => `Put the ${kind} spring ${id} (${number('spring', id)}) in.`)]
}

function screwLines({ screws = [], parts }: Design, number: Numbers): readonly string[] {
  return screws.map(({ screws_count, thread, class: grade, id, part, torque_Nmm, engagement_mm, holdsMount, across_mm }) => {
    const torque = showFigure(torque_Nmm, 'N·mm')
    const depth = showFigure(engagement_mm, 'mm')
    const at = holdsMount === undefined ? '' : `, at ${placeText(holdsMount.at)}`
    const across = across_mm === undefined ? '' : `, across the width at ${across_mm.map(lengthText).join(' and ')}`
    const what = `${screws_count} × ${thread.name} ${grade.name}, ${id} (${number('screw', id)})`
    return `${what}, in ${parts[part].name}${at}${across}: ${torque}, at least ${depth} of thread in grip.`
  })
}

/** The friction that was reckoned with is that of the named pair: another grease is another finger. */
function turningLines({ pins, stops }: Design): readonly string[] {
  const pairs = new Map<string, string[]>()
  for (const { id, friction } of pins) pairs.set(friction.name, [...(pairs.get(friction.name) ?? []), `pin ${id}`])
  for (const { id, friction } of stops) pairs.set(friction.name, [...(pairs.get(friction.name) ?? []), `stop ${id}`])
  const lines = [...pairs].map(([name, places]) => `${places.join(', ')}: ${name}.`)
  return [...lines, 'Another friction is another finger. Move every joint by hand, it must fall by itself.']
}

/** A design that names no grease point is not greased: what it was reckoned with has none. */
function greaseLines(design: Design): readonly string[] {
  const lines = greasedPlaces(design)
  return lines.length === 0 ? ['None is named, beyond what the words above say.'] : [...lines, 'Nothing else, and nowhere else.']
}

function checkLines(evaluation: Evaluation): readonly string[] {
  const { design } = evaluation
  const ids = [
    'motion.closes',
    'drive.effortMost',
    ...design.toggles.map(({ id }) => `closed.toggle.${id}.deadCentreMargin`),
    ...design.loadCases.flatMap(({ id, keeper }) => (keeper ? [`loadCase.${id}.sustainingLoad`] : [])),
    'return.letsGo',
    'return.margin',
  ]
  const lines = ids.flatMap((id) => {
    const figure = figureOf(evaluation, id)
    if (figure?.value === undefined) return []
    return [`${figure.title}: ${showFigure(figure.value, figure.unit)} reckoned; found ……………`]
  })
  return [
    ...lines,
    'Close it and let go ten times, with the load and without: it must open by itself each time. If it stays once, it does not leave.',
  ]
}
