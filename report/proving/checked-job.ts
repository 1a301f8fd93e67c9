/** How the program itself was checked, from the origins that its tests name beside their expected numbers. */
import type { TypesetJob } from '../typeset/typeset-job.ts'
import { headOf, type KnownOf } from './known-of.ts'
import published from './published-checks.json' with { type: 'json' }

type Check = (typeof published.checks)[number]

/** Folders of the engine in the order of the work, and what a reader calls them. */
const SUBJECTS: Readonly<Record<string, string>> = {
  design: 'Sizes, fits, materials, wire',
  motion: 'Motion',
  forces: 'Forces and friction',
  strength: 'Strength, springs, screws, fatigue',
  variation: 'Tolerances',
  inspection: 'Measured parts and lots',
  making: 'What goes to the shop',
  proving: 'Requirements and risks',
  numbers: 'Numbers',
}

/** What has no heading of its own. */
const OTHERS = 'Units, and the whole path'

/** How the page marks who has seen a number where it was published; letters are no colour. */
const MARKS: Readonly<Record<string, string>> = {
  read: 'R',
  'read as quoted elsewhere': 'Q',
  'read in part': 'P',
  'from memory': 'M',
}

/** Two pages: which published values the program meets in its tests, which of them were read and which recalled, and what that does not show. */
export function checkedJob(known: KnownOf): TypesetJob {
  return {
    template: 'checked',
    data: {
      ...headOf('How this program was checked', known),
      opening: openingLines(),
      marks: Object.entries(MARKS).map(([how, mark]) => ({ mark, words: `${how}: ${count(({ known: one }) => one === how)}` })),
      subjects: subjects(),
      ends: ENDS,
    },
  }
}

function count(of: (check: Check) => boolean): number {
  return published.checks.filter(of).length
}

function openingLines(): readonly string[] {
  const { hand, property, otherMethod } = published.moreThan
  return [
    `Every version runs its tests before it is handed on. ${published.checks.length} of their expected numbers or sets of numbers come from standards, books, papers and published data; they are listed here with what the test states.`,
    `Beside them more than ${hand} were worked out by hand, more than ${otherMethod} come from another program or another method (a matrix library, a rigid-body engine, a kernel for solids, a reader of PDF, a statistics library, numerical integrals), and more than ${property} are laws that have to hold: equilibrium, virtual work, energy, symmetry, limit cases.`,
    'A number that nobody on this project has seen where it was published is marked M. It was recalled, then worked out again where that could be done. Look it up before you rest anything on it.',
  ]
}

const ENDS: readonly string[] = [
  'That a program meets its examples does not show that it meets your finger: its model leaves things out (see the limits of the model in the report), and no wearer’s finger has been measured against it here.',
  'Bench tests of your own sets do that: Check holds what a rig found against what was predicted.',
]

function subjects() {
  const groups = Object.entries(SUBJECTS).map(([folder, title]) => ({ title, of: (check: Check) => check.subject === folder }))
  return [...groups, { title: OTHERS, of: ({ subject }: Check) => !(subject in SUBJECTS) }].flatMap(({ title, of }) => {
    const checks = published.checks.filter(of).map(({ states, source, known }) => ({ states, source, mark: MARKS[known] }))
    return checks.length === 0 ? [] : [{ title, checks }]
  })
}
