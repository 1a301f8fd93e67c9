import { useCallback, useEffect, useMemo, useState } from 'react'
import { type Design, figureNames } from '../../../engine/index.ts'
import { riggedFigures } from '../../../report/index.ts'
import { isKeptHere, type OpenDesign } from '../../state/open-design.ts'
import { useShared } from '../../state/shared-state.ts'
import styles from './bench.module.css'
import { fetchBench } from './bench.ts'
import { ChosenLot } from './chosen-lot.tsx'
import { Gauges } from './gauges.tsx'
import { NewLot } from './new-lot.tsx'
import { useFetched } from './use-fetched.ts'
import { keptCount, useWho, whoNow } from './who.ts'

/** The bench: a lot, a serial number, one reading after the other. Only where the server keeps what is entered. */
export function BenchSection({ open, design }: { readonly open: OpenDesign; readonly design: Design }) {
  return (
    <section aria-labelledby="bench">
      <h2 id="bench">At the bench</h2>
      {isKeptHere(open) ? (
        <Bench name={open.name} design={design} />
      ) : (
        <p className="aside">
          Readings are kept with the revisions of a design. This one was opened from disk and is kept nowhere: bring it into the
          store first, or open a file of readings above.
        </p>
      )}
    </section>
  )
}

function Bench({ name, design }: { readonly name: string; readonly design: Design }) {
  const figures = useMemo(() => riggedFigures(figureNames(design)), [design])
  const ask = useCallback(() => fetchBench(name), [name])
  const { value: bench, fault, again } = useFetched(name, ask)
  const who = useWho()
  const kept = useShared(keptCount)
  useEffect(() => (kept > 0 ? again() : undefined), [kept, again])
  const [lot, setLot] = useState('')
  if (bench === undefined) return <p role={fault === undefined ? 'status' : 'alert'}>{fault ?? 'Looking for lots …'}</p>
  if (bench.notKept !== undefined) return <p role="alert">Nothing can be kept here. {bench.notKept}</p>
  const chosen = bench.lots.find((one) => one.lot === lot)
  return (
    <div className={styles.bench}>
      <p className={styles.field}>
        <label htmlFor="bench-who">Who measures</label>
        <input id="bench-who" value={who} autoComplete="off" onChange={({ target }) => whoNow.set(target.value)} />
      </p>
      {bench.lots.length === 0 ? null : (
        <p className={styles.field}>
          <label htmlFor="bench-lot">Lot</label>
          <select id="bench-lot" value={lot} onChange={({ target }) => setLot(target.value)}>
            <option value="">begin a new one</option>
            {bench.lots.map((one) => (
              <option key={one.lot} value={one.lot}>
                {one.lot}, to revision {one.revision}
              </option>
            ))}
          </select>
        </p>
      )}
      {chosen === undefined ? (
        <NewLot
          name={name}
          who={who}
          begun={(begun) => {
            setLot(begun)
            again()
          }}
        />
      ) : (
        <ChosenLot key={chosen.lot} figures={figures} about={{ name, who, lot: chosen, gauges: bench.gauges, again }} />
      )}
      <Gauges name={name} gauges={bench.gauges} calibrations={bench.calibrations} />
    </div>
  )
}
