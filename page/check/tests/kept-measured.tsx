import { useEffect, useMemo, useState } from 'react'
import { type BenchTest, type Design, figureNames } from '../../../engine/index.ts'
import {
  measuredTests,
  readForce,
  riggedFigures,
  type SerialTest,
  type TestKind,
  testKinds,
  unnamedTests,
} from '../../../report/index.ts'
import styles from '../bench/bench.module.css'

/** What is held against each kind of test that was kept as measured without its figure: the rig knows, the program does not. */
export function KeptMeasured(about: {
  readonly kept: readonly SerialTest[]
  readonly design: Design
  readonly put: (tests: readonly BenchTest[]) => void
}) {
  const { kept, design, put } = about
  const figures = useMemo(() => riggedFigures(figureNames(design)), [design])
  const kinds = useMemo(() => testKinds.filter((kind) => kind !== 'cycles' && unnamedTests(kept, kind).length > 0), [kept])
  const [chosen, setChosen] = useState<Partial<Record<TestKind, string>>>({})
  const [typed, setTyped] = useState('')
  const uncertainty = readForce(typed)
  useEffect(() => {
    const given = uncertainty ?? 0
    put(
      kinds.flatMap((kind) => {
        const figure = chosen[kind]
        return figure === undefined || figure === '' ? [] : measuredTests(kept, { kind, figure, uncertainty: given })
      }),
    )
  }, [kinds, chosen, uncertainty, kept, put])
  if (kinds.length === 0) return null
  return (
    <div className={`${styles.entry} screen-only`}>
      {kinds.map((kind) => (
        <p key={kind} className={styles.field}>
          <label htmlFor={`held-${kind}`}>Measured: {kind}</label>
          <select
            id={`held-${kind}`}
            value={chosen[kind] ?? ''}
            onChange={({ target }) => setChosen({ ...chosen, [kind]: target.value })}
          >
            <option value="">held against nothing</option>
            {figures.map(({ id, title }) => (
              <option key={id} value={id}>
                {title}
              </option>
            ))}
          </select>
        </p>
      ))}
      <p className={styles.field}>
        <label htmlFor="rig-leaves">The rig leaves open</label>
        <input id="rig-leaves" value={typed} autoComplete="off" onChange={({ target }) => setTyped(target.value)} />
        <span className={uncertainty === undefined && typed !== '' ? styles.wrong : 'hint'}>
          {uncertainty === undefined && typed !== ''
            ? 'Needed: a force, such as 0.5 N'
            : 'either way, k = 2, such as 0.5 N; left empty the rig counts as exact'}
        </span>
      </p>
    </div>
  )
}
