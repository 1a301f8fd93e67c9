import { Option } from 'commander'
import { figureNames, readDesign } from '../engine/index.ts'
import type { Store } from '../records/index.ts'
import {
  readCertificateEntry,
  readDecisionEntry,
  readSignOff,
  readTestEntry,
  readWithdrawal,
  riggedFigures,
  serialSheet,
  testKinds,
  testOutcomes,
} from '../report/index.ts'
import { decidingOf, judgedSerial } from '../server/index.ts'
import { type Begun, correctable, WHO } from './bench-command.ts'
import { printOutcomes } from './bench-outcomes.ts'
import { type Entering, keepOne } from './keep-one.ts'
import { readPhoto } from './read-photo.ts'
import type { Ends } from './store-commands.ts'
import { WrongUse } from './terminal.ts'

/** Adds what is entered at the bench beside readings: certificates, tests, decisions, signatures, and imports that are taken back. */
export function addBenchEntries(command: Begun, ends: Ends): void {
  addCertificate(command, ends)
  addTest(command, ends)
  addDecision(command, ends)
  addPapers(command, ends)
}

interface CertificateOptions extends Entering {
  readonly coating: string
  readonly coupons: string
  readonly curedAt?: string
  readonly curedFor?: string
  readonly issued: string
  readonly note?: string
}

function addCertificate(command: Begun, { terminal, end }: Ends): void {
  correctable(
    command('enter-certificate', 'enter a coater’s certificate: its coupons take the place of the range of the film')
      .argument('<LOT>', 'lot that it is about')
      .requiredOption('--coating <NAME>', 'which coating, as the design names it')
      .requiredOption('--coupons <SIZES>', 'thickness of every coupon in µm, such as "12 12.5 11"')
      .requiredOption('--issued <DAY>', 'day of the certificate, such as 2031-04-05')
      .option('--cured-at <DEGC>', 'degrees Celsius')
      .option('--cured-for <MIN>', 'minutes')
      .option('--note <WORDS>', 'what else it says'),
  ).action(async (name: string, lot: string, options: CertificateOptions) => {
    const { coating, coupons, curedAt: cureHeat = '', curedFor: cureTime = '', issued, note = '' } = options
    const read = () => readCertificateEntry({ coating, coupons, cureHeat, cureTime, issued, note }, lot)
    const said = `The certificate of ${issued} is kept: sets of ${lot} are judged with its coupons.`
    end(await keepOne({ name, options, about: `certificate of ${issued}`, read, said }, terminal))
  })
}

interface TestOptions extends Entering {
  readonly test: string
  readonly value: string
  readonly outcome: string
  readonly figure?: string
  readonly uncertainty?: string
  readonly tested: string
  readonly rig: string
  readonly note?: string
  readonly photo?: string
}

const TESTS = `
What a rig measured says which figure of the design it was, so that fingerwright bench holds it against the prediction.

Example
  fingerwright enter-test heron A-001 --test "load to hold" --value "17.5 N" --outcome measured \\
    --figure loadCase.carry.sustainingLoad --uncertainty "0.5 N" --rig "rig 1" --tested 2031-04-05 --who K1`

function addTest(command: Begun, { terminal, end }: Ends): void {
  correctable(
    command('enter-test', 'enter a bench test of a serial number')
      .argument('<SERIAL>', 'serial number of one of its lots')
      .addOption(new Option('--test <KIND>', 'what was tested').choices(testKinds).makeOptionMandatory())
      .requiredOption('--value <AMOUNT>', 'the load, such as "60 N"; of cycles how many were run')
      .addOption(new Option('--outcome <OUTCOME>', 'what came of it').choices(testOutcomes).makeOptionMandatory())
      .option('--figure <FIGURE>', 'figure of the design that was measured, by its name in --json or its title')
      .option('--uncertainty <FORCE>', 'what the rig leaves open either way (k = 2)')
      .requiredOption('--tested <DAY>', 'day of the test')
      .requiredOption('--rig <RIG>', 'on what it was tested')
      .option('--note <WORDS>', 'what else was seen')
      .option('--photo <FILE>', 'photo of it, JPEG or PNG')
      .addHelpText('after', TESTS),
  ).action(async (name: string, serial: string, options: TestOptions) => {
    const { test, value, outcome, figure = '', uncertainty = '', tested, rig, note = '', photo } = options
    const shown = photo === undefined ? {} : await readPhoto(photo)
    const typed = { test, value, outcome, figure, uncertainty, tested, rig, note }
    const read = (store: Store) => {
      const entry = readTestEntry(typed, { serial, figures: forcesOf(store, { name, serial }) })
      return entry.value === undefined ? entry : { value: { ...entry.value, ...shown } }
    }
    end(await keepOne({ name, options, about: `test of ${serial}`, read, said: `${test} of ${serial} is kept.` }, terminal))
  })
}

/** Forces among the figures of the revision that a set was made to. */
function forcesOf(store: Store, { name, serial }: { readonly name: string; readonly serial: string }) {
  const number = store.bench.serial(name, serial)?.revision
  const { value } = readDesign(number === undefined ? '' : (store.revision(name, number)?.text ?? ''))
  return value === undefined ? [] : riggedFigures(figureNames(value))
}

interface DecisionOptions extends Entering {
  readonly decision: string
  readonly why?: string
}

function addDecision(command: Begun, { terminal, end }: Ends): void {
  correctable(
    command('decide', 'decide about a reading that is not within its limits; what was calculated goes with the decision')
      .argument('<SERIAL>', 'serial number of one of its lots')
      .argument('<CHARACTERISTIC>', 'its number in the plan, or its place in the design')
      .option('--decision <WHAT>', 'use as is, rework or scrap; left out what each of them comes to is told')
      .option('--why <WHY>', 'why it is decided so'),
  ).action(async (name: string, serial: string, characteristic: string, options: DecisionOptions) => {
    const asked = { design: name, serial, characteristic }
    if (options.decision === undefined) return end(await printOutcomes(asked, { store: options.store, terminal }))
    const { decision, why = '' } = options
    const read = (store: Store) => {
      const deciding = decidingOf(store, asked)
      return deciding.value === undefined ? deciding : readDecisionEntry({ decision, why }, deciding.value)
    }
    end(
      await keepOne(
        { name, options, about: `decision on ${characteristic} of ${serial}`, read, said: `Decided: ${decision}.` },
        terminal,
      ),
    )
  })
}

interface SignOptions extends Entering {
  readonly statement: string
}

function addPapers(command: Begun, { terminal, end }: Ends): void {
  command('sign-off', 'sign off the first article of a serial number; how the set is judged now goes with it')
    .argument('<SERIAL>', 'serial number of one of its lots')
    .requiredOption('--statement <WORDS>', 'what you stand for, in your words')
    .requiredOption('--who <WHO>', WHO)
    .action(async (name: string, serial: string, options: SignOptions) => {
      const read = (store: Store) => {
        const found = judgedSerial(store, { design: name, serial })
        if (found?.set === undefined)
          throw new WrongUse(`${serial}: there is no such serial number of ${name} that can be judged`)
        const judged = serialSheet(found.set).sentence
        return readSignOff({ statement: options.statement }, { lot: found.history.lot, serial, judged })
      }
      end(await keepOne({ name, options, about: `sign-off of ${serial}`, read, said: `${serial} is signed off.` }, terminal))
    })
  command(
    'withdraw-import',
    'take back a whole table of readings, such as one whose columns were taken wrongly; it may come in again',
  )
    .argument('<IMPORT>', 'its number, as fingerwright lots shows it')
    .requiredOption('--reason <WHY>', 'why it is taken back')
    .requiredOption('--who <WHO>', WHO)
    .action(async (name: string, number: string, { reason, ...options }: Entering & { readonly reason: string }) => {
      if (!/^[1-9]\d{0,8}$/.test(number))
        throw new WrongUse(`${number}: needs the number of an import; fingerwright lots ${name} shows them`)
      const read = () => readWithdrawal({ reason }, Number(number))
      const said = `Import ${number} is taken back; its readings stay in the book and count no longer.`
      end(await keepOne({ name, options, about: `import ${number}`, read, said }, terminal))
    })
}
