import { useState } from 'react'
import { type HistoryLine, historyLines } from '../../../report/index.ts'
import { momentWords } from '../../revisions/moment-words.ts'
import styles from './bench.module.css'
import { benchOf } from './bench.ts'
import { CertificateEntryForm } from './certificate-form.tsx'
import { JudgeButton } from './judge-button.tsx'
import type { OneSerial } from './one-serial.ts'
import { TestEntryForm } from './test-form.tsx'

/** Coating, tests, decisions, signatures and what came back, oldest first; a wrong one is corrected by another entry, and both stay. */
export function SerialEntries(one: OneSerial) {
  const { about, serial } = one
  const [chosen, setChosen] = useState<HistoryLine>()
  const lines = historyLines(serial, momentWords)
  if (lines.length === 0) return null
  const photos = new Set(serial.tests.flatMap(({ id, hasPhoto }) => (hasPhoto ? [id] : [])))
  const photoOf = ({ sort, id }: HistoryLine) =>
    sort === 'test' && photos.has(id) ? `${benchOf(about.name)}/photos/${id}` : undefined
  return (
    <>
      <h4>Coating, tests, decisions, and what came back</h4>
      <ul className={styles.others}>
        {lines.map((line) => (
          <Line key={`${line.sort} ${line.id}`} line={line} photo={photoOf(line)} correct={() => setChosen(line)} />
        ))}
      </ul>
      {chosen === undefined ? null : (
        <CorrectedEntry key={`${chosen.sort} ${chosen.id}`} one={one} line={chosen} done={() => setChosen(undefined)} />
      )}
    </>
  )
}

/** Signatures are not corrected: another is signed. What came back is corrected in the field log. */
const CORRECTED: ReadonlySet<HistoryLine['sort']> = new Set(['certificate', 'test', 'decision'])

function Line(about: { readonly line: HistoryLine; readonly photo: string | undefined; readonly correct: () => void }) {
  const { line, photo, correct } = about
  const { sort, words, said, isStruck } = line
  return (
    <li>
      {isStruck ? <del>{words}</del> : words}{' '}
      {!isStruck && CORRECTED.has(sort) ? (
        <button type="button" className="plain screen-only" onClick={correct}>
          Correct it
        </button>
      ) : null}
      <span className="reason">{said}</span>
      {photo === undefined ? null : (
        <a className={styles.photo} href={photo} download>
          <img src={photo} alt={words} loading="lazy" />
        </a>
      )}
    </li>
  )
}

/** The form of the entry that is corrected. What a decision comes to is worked out with it, so that it is decided anew where the set is judged. */
function CorrectedEntry(about: { readonly one: OneSerial; readonly line: HistoryLine; readonly done: () => void }) {
  const {
    one: { about: bench, serial, plan, figures },
    line: { sort, id },
    done,
  } = about
  const certificate = sort === 'certificate' ? serial.certificates.find((kept) => kept.id === id) : undefined
  if (certificate !== undefined)
    return <CertificateEntryForm name={bench.name} lot={serial.lot} plan={plan} corrected={certificate} done={done} />
  const test = sort === 'test' ? serial.tests.find((kept) => kept.id === id) : undefined
  if (test !== undefined)
    return <TestEntryForm name={bench.name} serial={serial.serial} figures={figures} corrected={test} done={done} />
  return (
    <JudgeButton
      words={`Judge ${serial.serial} in full, to decide anew with what each decision comes to`}
      bench={{ design: bench.name, lot: serial.lot, revision: serial.revision }}
      serials={[serial.serial]}
    />
  )
}
