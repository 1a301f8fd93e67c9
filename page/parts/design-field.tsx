import { type KeyboardEvent, useId, useState } from 'react'
import { type Field, type Problem, readField, sentence } from '../../engine/index.ts'
import { sayReading } from '../../report/index.ts'
import { useUnits } from '../state/units.ts'
import styles from './design-tables.module.css'

/** A field with the document that it stands in, and what is done when something else was typed. */
export interface FieldProps {
  readonly field: Field
  readonly text: string
  readonly take: (field: Field, typed: string) => void
}

/** One value of the design: typed where it stands, or chosen where there are only a few. */
export function DesignField(props: FieldProps) {
  const { kind } = props.field
  return kind === 'choice' || kind === 'yes or no' ? <ChosenField {...props} /> : <TypedField {...props} />
}

function ChosenField({ field, take }: FieldProps) {
  const choices = field.kind === 'yes or no' ? ['yes', 'no'] : (field.choices ?? [])
  const typed = field.typed ?? ''
  const id = useId()
  // What stands there now is offered too, however wrong it is.
  const offered = [...(field.optional ? [''] : []), ...new Set([...(typed === '' ? [] : [typed]), ...choices])]
  return (
    <div className={styles.field}>
      <label htmlFor={`${id}in`}>{field.label}</label>
      <select
        id={`${id}in`}
        data-place={field.place.join('.')}
        value={typed}
        aria-describedby={id}
        onChange={({ target }) => take(field, target.value)}
      >
        {offered.map((choice) => (
          <option key={choice} value={choice}>
            {choice === '' ? 'not stated' : choice}
          </option>
        ))}
      </select>
      <Beside id={id} field={field} problems={field.problems} />
    </div>
  )
}

function TypedField({ field, text, take }: FieldProps) {
  const [draft, setDraft] = useState<string>()
  const [known, setKnown] = useState(field.typed)
  // What was taken stands here until the document says it.
  if (known !== field.typed) {
    setKnown(field.typed)
    setDraft(undefined)
  }
  const units = useUnits()
  const id = useId()
  const found = draft === undefined ? field : readField(text, field.place, draft)
  const stands = field.typed ?? ''
  const isChanged = draft !== undefined && draft.trim() !== stands
  const canTake = draft !== undefined && (isLeftOut(field, draft) || isRead(field, found))
  const give = (): void => {
    if (!isChanged) setDraft(undefined)
    if (!isChanged || !canTake) return
    take(field, draft)
  }
  const press = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') give()
    else if (event.key === 'Escape' && draft !== undefined) setDraft(undefined)
    else return
    event.preventDefault()
  }
  const said = found.read === undefined ? undefined : sayReading(found.read, units)
  // What is typed as it is read need not be said twice.
  const reading = said === plainly(draft ?? stands) ? undefined : said
  return (
    <div className={styles.field}>
      <label htmlFor={`${id}in`}>{field.label}</label>
      <input
        id={`${id}in`}
        data-place={field.place.join('.')}
        type="text"
        className={field.kind === 'text' ? styles.words : undefined}
        value={draft ?? stands}
        placeholder={field.optional ? 'not stated' : undefined}
        title={field.says ?? field.needed}
        spellCheck={field.kind === 'text'}
        autoComplete="off"
        data-changed={isChanged}
        aria-invalid={found.problems.length > 0}
        aria-describedby={id}
        onChange={({ target }) => setDraft(target.value)}
        onKeyDown={press}
      />
      <Beside id={id} field={field} problems={found.problems} {...(reading === undefined ? {} : { reading })}>
        {isChanged && canTake ? 'Enter takes it, Escape gives it back' : undefined}
      </Beside>
    </div>
  )
}

/** As a reading is written: a true minus sign, a raised point, no zeros at the end. */
function plainly(typed: string): string {
  return typed
    .trim()
    .replace('-', '−')
    .replaceAll('*', '·')
    .replace(/(\.\d*?)0+(?=\D|$)/, '$1')
    .replace(/\.(?=\D)/, '')
}

function isLeftOut(field: Field, draft: string): boolean {
  return field.optional && draft.trim() === ''
}

/** A quantity that was read may be taken even where the design is then refused: the rest may follow. Words must have no problem. */
function isRead(field: Field, found: Pick<Field, 'read' | 'problems'>): boolean {
  return field.kind === 'text' ? found.problems.length === 0 : found.read !== undefined
}

/** How the value is read, what is wrong with it, and what may be done. */
function Beside(about: {
  readonly id: string
  readonly field: Field
  readonly problems: readonly Problem[]
  readonly reading?: string
  readonly children?: string | undefined
}) {
  const { id, field, problems, reading, children } = about
  const here = field.place.join('.')
  return (
    <span id={id} className={styles.beside}>
      {reading === undefined ? null : <span className={styles.reading}>= {reading}</span>}
      {problems.map((problem) => (
        <span key={sentence('', problem)} className={styles.problem}>
          {sentence('', placed(problem, here))}
        </span>
      ))}
      {children === undefined ? null : <span className={styles.way}>{children}</span>}
    </span>
  )
}

/** Beside its own field a problem need not say where it stands. */
function placed({ line: _, ...problem }: Problem, here: string): Problem {
  return problem.place === here ? { ...problem, place: '' } : problem
}
