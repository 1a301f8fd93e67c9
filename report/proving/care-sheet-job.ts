/** The fitting and care sheet for the wearer's prosthetist, on two pages. */
import { type Design, inspectionInterval, sentence, showFigure } from '../../engine/index.ts'
import { greasedPlaces } from '../making/greased-places.ts'
import { caution } from '../sentences/caution.ts'
import type { TypesetJob } from '../typeset/typeset-job.ts'
import { closingsWords } from '../wear/wear-rows.ts'
import { headOf, type KnownOf } from './known-of.ts'

const FITTING: readonly string[] = [
  'Fitting is the work of a licensed prosthetist. What the prosthetist finds goes before this sheet; its times and counts are the workshop’s own.',
  'Look at the skin before and after two hours of wear: no mark may stay longer than 20 minutes.',
  'Measure what the wearer gives at the drive without tiring, and compare it with the effort below.',
  'Close and open the finger 20 times with the hand up, down and sideways: it opens by itself each time.',
  'Let the wearer hold each load that the limits card names as made for, over a soft floor, and let it go again.',
  'Have the wearer show how to open the finger with the other hand.',
  'Hand over the limits card and read it together.',
]

const LOOK: readonly string[] = [
  'Does it open by itself, fast and all the way, in every attitude?',
  'Play: move the fingertip by hand, closed and open; compare with the last time and write it down.',
  'Screws: felt by hand, and tightened to the torque of the first page where one gave.',
  'Pins, links and phalanges: bends, cracks, edges, bare metal where there was a coating.',
  'Spring: seated, no rust, no broken coil.',
  'Skin and liner: sores, rash, smell.',
]

const STOP: readonly string[] = [
  'It does not open by itself once, in any attitude.',
  'A part is bent, cracked, loose or missing.',
  'It slips under a load that it held before.',
  'The play has grown so that it is seen.',
  'The skin has an open sore, or a rash that stays.',
  'It fell from the height of a table or was run over: back to the workshop first.',
]

/** Two pages: fitting, torques, grease, effort; then inspection, cleaning, what ends its use. */
export function careSheetJob(known: KnownOf): TypesetJob {
  const { design } = known.evaluation
  return {
    template: 'care-sheet',
    data: {
      ...headOf('Fitting and care', known),
      caution,
      fitting: FITTING,
      effort: effortLines(known),
      torques: torqueRows(design),
      joints: jointLines(design),
      interval: intervalLines(known),
      look: LOOK,
      cleaning: [
        'Wipe with a damp cloth and mild soap, rinse, dry open. No solvent: it takes the film and the grease from the pins.',
        'After salt water or grit: rinse at once, dry, try that it opens by itself before it is worn.',
      ],
      stop: STOP,
    },
  }
}

const N_MM_PER_N_M = 1000
const TORQUE_DIGITS = 3

/** In N·m, as torque drivers are marked. */
function torqueRows({ screws = [], parts }: Design): readonly {
  readonly words: string
  readonly torque: string
}[] {
  return screws.map(({ id, thread, part, screws_count, torque_Nmm, ...screw }) => ({
    words: `${screws_count} × ${thread.name} ${screw.class.name}, ${id}, into ${parts[part].name}`,
    torque: `${Number((torque_Nmm / N_MM_PER_N_M).toPrecision(TORQUE_DIGITS))} N·m`,
  }))
}

function effortLines({ evaluation }: KnownOf): readonly string[] {
  const { design, figures, units } = evaluation
  const effort = figures.find(({ id }) => id === 'drive.effortMost')
  const asks =
    typeof effort?.value === 'number'
      ? `The finger asks for at most ${showFigure(effort.value, effort.unit, units)} at the drive.`
      : 'What the finger asks for at the drive is not known.'
  const { effortMost } = design.drive.travel
  const unit = design.drive.kind === 'turn' ? 'N·mm' : 'N'
  const gives = effortMost === undefined ? [] : [`It was designed for a wearer who gives ${showFigure(effortMost, unit, units)}.`]
  return [asks, ...gives]
}

function jointLines(design: Design): readonly string[] {
  const { pins } = design
  const pairs = [...new Set(pins.map(({ friction }) => friction.name))]
  const places = greasedPlaces(design)
  return [
    ...pairs.map((pair) => {
      const of = pins.filter(({ friction }) => friction.name === pair).map(({ id }) => id)
      return `Pins ${of.join(', ')} run as ${pair}.`
    }),
    ...(places.length === 0
      ? ['The design names no grease: put none on without asking the workshop; it changes the friction that was calculated.']
      : [
          ...places.map((place) => `Grease at every inspection and after washing, ${place}`),
          'No other grease, and nowhere else: it changes the friction that was calculated.',
        ]),
  ]
}

function titleOf(requirement: string, { evaluation }: KnownOf): string {
  const finding = evaluation.findings.find((one) => one.requirement.id === requirement)
  return `${(finding?.figure?.title ?? requirement).toLowerCase()} (requirement ${requirement})`
}

function intervalLines(known: KnownOf): readonly string[] {
  const { lived } = known
  const { design } = known.evaluation
  if (lived === undefined)
    return ['The interval is not worked out: wear was not asked for. The workshop states it before the finger is handed over.']
  if (lived.missing !== undefined) {
    const [first] = lived.missing
    return [
      `The interval is not worked out. ${sentence('The design', first)} The workshop states it before the finger is handed over.`,
    ]
  }
  const found = inspectionInterval(design, lived.life)
  if (found === undefined) return ['The interval is not worked out: the design does not say how often it is closed.']
  const { interval_days, first, isTooOften } = found
  return [
    `Look the finger over at least every ${interval_days} days.`,
    first === undefined
      ? 'At the most wear every requirement that is met when new is met over the stated life; the interval is that for skin, screws and cracks.'
      : `At the most wear, ${titleOf(first.requirement, known)} may fall short first, after ${closingsWords(first.closings)} closings; the interval is a quarter of that, at most half a year.`,
    ...(isTooOften
      ? ['By its wear it would have to be looked over more than once a week: it should not be handed over as it is.']
      : []),
  ]
}
