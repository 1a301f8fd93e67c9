import { type FormEvent, useCallback, useEffect, useState } from 'react'
import type { FigureName } from '../../../engine/index.ts'
import { useShared } from '../../state/shared-state.ts'
import type { AtBench } from './at-bench.ts'
import styles from './bench.module.css'
import { fetchPlan, fetchSerial } from './bench.ts'
import { CertificateForm } from './certificate-form.tsx'
import { Imports } from './imports.tsx'
import { JudgeButton } from './judge-button.tsx'
import { PastedRows } from './pasted-rows.tsx'
import { ReadingField } from './reading-field.tsx'
import { SerialPage } from './serial-page.tsx'
import { useFetched } from './use-fetched.ts'
import { keptCount } from './who.ts'

/** The lot that is measured: which serial number, its readings one after the other, and what it will do. */
export function ChosenLot({ about, figures }: { readonly about: AtBench; readonly figures: readonly FigureName[] }) {
  const { name, lot } = about
  const bench = { design: name, lot: lot.lot, revision: lot.revision }
  const askPlan = useCallback(() => fetchPlan(name, lot.revision), [name, lot.revision])
  const plan = useFetched(`${name} ${lot.revision}`, askPlan)
  const [typed, setTyped] = useState('')
  const [serial, setSerial] = useState('')
  const isThere = lot.serials.some((one) => one.serial === serial)
  const askSerial = useCallback(() => fetchSerial(name, serial), [name, serial])
  const found = useFetched(isThere ? `${name} ${serial}` : undefined, askSerial)
  const count = useShared(keptCount)
  const { again } = found
  useEffect(() => (count > 0 ? again() : undefined), [count, again])
  const take = (event: FormEvent): void => {
    event.preventDefault()
    setSerial(typed.trim())
  }
  const kept = (): void => {
    about.again()
    found.again()
  }
  return (
    <>
      <form onSubmit={take}>
        <p className={styles.field}>
          <label htmlFor="bench-serial">Serial number</label>
          <input
            id="bench-serial"
            list="serials"
            value={typed}
            autoComplete="off"
            onChange={({ target }) => setTyped(target.value)}
          />
          <datalist id="serials">
            {lot.serials.map((one) => (
              <option key={one.serial} value={one.serial} />
            ))}
          </datalist>
          <button type="submit" className="plain" disabled={typed.trim() === ''}>
            Measure it
          </button>
        </p>
      </form>
      {plan.fault === undefined ? null : <p role="alert">{plan.fault}</p>}
      {serial === '' || plan.value === undefined ? null : (
        <ReadingField
          key={serial}
          about={about}
          serial={serial}
          plan={plan.value}
          readings={found.value?.readings ?? []}
          kept={kept}
        />
      )}
      {plan.value === undefined ? null : <CertificateForm name={name} lot={lot.lot} plan={plan.value} />}
      <PastedRows about={about} plan={plan.value} kept={kept} />
      <Imports name={name} lot={lot} />
      <JudgeButton
        words={`Judge all of lot ${lot.lot} as measured`}
        bench={bench}
        serials={lot.serials.filter(({ readings }) => readings > 0).map(({ serial: one }) => one)}
      />
      {found.fault === undefined ? null : <p role="alert">{found.fault}</p>}
      {found.value === undefined || plan.value === undefined ? null : (
        <SerialPage {...{ about, figures, kept }} serial={found.value} plan={plan.value} />
      )}
    </>
  )
}
