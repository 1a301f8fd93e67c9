import { sentence } from '../../../engine/index.ts'
import { MarkWithWord } from '../../parts/mark.tsx'
import { JudgeButton } from './judge-button.tsx'
import type { OneSerial } from './one-serial.ts'
import { SerialEntries } from './serial-entries.tsx'
import { SerialReadings } from './serial-readings.tsx'
import { SignOffForm } from './sign-off-form.tsx'
import { TestForm } from './test-form.tsx'

/** One serial number on one page: what it will do as measured, every reading with who and when, and what else is known of it. */
export function SerialPage(one: OneSerial) {
  const { about, serial, figures } = one
  const { sheet, problems } = serial
  return (
    <section aria-label={`Serial ${serial.serial}`}>
      <h3>
        {serial.serial}, lot {serial.lot}, revision {serial.revision}{' '}
        {sheet === undefined ? null : <MarkWithWord answer={sheet.verdict} />}
      </h3>
      {sheet === undefined ? null : <p data-testid="as-measured">{sheet.sentence}</p>}
      {problems.map((problem) => (
        <p key={sentence('', problem)} role="alert">
          {sentence('', problem)}
        </p>
      ))}
      <SerialReadings {...one} />
      {serial.readings.length === 0 ? null : (
        <JudgeButton
          words={`Judge ${serial.serial} in full: yield, and what each decision comes to`}
          bench={{ design: about.name, lot: serial.lot, revision: serial.revision }}
          serials={[serial.serial]}
        />
      )}
      <SerialEntries {...one} />
      <TestForm name={about.name} serial={serial.serial} figures={figures} />
      <SignOffForm name={about.name} serial={serial} />
    </section>
  )
}
