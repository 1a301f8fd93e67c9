import { useState } from 'react'
import { type LifeStudy, lifeStudy, proofStudy, shownWorking, weibullWorking } from '../../../engine/index.ts'
import { leastReached, lifeLines, readLifeAsked, shownSentence, testKinds, testRuns } from '../../../report/index.ts'
import { OpenedWorking } from '../../parts/opened-working.tsx'
import styles from '../bench/bench.module.css'
import type { OpenedTests } from './tests-now.ts'

/** What runs and loads show, with few of them and fewer failures. */
export function LifeSection({ opened }: { readonly opened: OpenedTests }) {
  const cycles = [...opened.runs, ...testRuns(opened.kept, 'cycles')]
  const loads = testKinds.filter((kind) => kind !== 'cycles').map((kind) => ({ kind, runs: testRuns(opened.kept, kind) }))
  const [typed, setTyped] = useState({ life: '', shape: '1', confidence: '95' })
  const loaded = loads.filter(({ runs }) => runs.length > 0)
  if (cycles.length === 0 && loaded.length === 0) return null
  const asked = readLifeAsked({ ...typed, life: typed.life || (cycles.length === 0 ? '1' : String(leastReached(cycles))) })
  const field = (key: keyof typeof typed, words: string, hint: string) => (
    <p className={styles.field}>
      <label htmlFor={`life-${key}`}>{words}</label>
      <input
        id={`life-${key}`}
        value={typed[key]}
        autoComplete="off"
        onChange={({ target }) => setTyped({ ...typed, [key]: target.value })}
      />
      <span className="hint">{hint}</span>
    </p>
  )
  return (
    <>
      <h3>What the tests show</h3>
      <div className={`${styles.entry} screen-only`}>
        {cycles.length === 0 ? null : field('life', 'Life asked', 'cycles; left empty the shortest run')}
        {cycles.length === 0 ? null : field('shape', 'Shape', 'of the law of lives: 1 by chance, 2 and more by wear')}
        {field('confidence', 'Sure to', '%')}
      </div>
      {asked === undefined ? <p role="alert">Needed: numbers above 0, and a confidence below 100 %.</p> : null}
      {asked === undefined || cycles.length === 0 ? null : <Life study={lifeStudy(cycles, asked)} />}
      {asked === undefined
        ? null
        : loaded.map(({ kind, runs }) => {
            const load = leastReached(runs)
            const shown = proofStudy(runs, { load, confidence: asked.confidence })
            return (
              <OpenedWorking key={kind} working={shownWorking(shown, asked.confidence)}>
                {shownSentence(shown, { at: `${kind}, ${load} N`, confidence: asked.confidence })}
              </OpenedWorking>
            )
          })}
    </>
  )
}

function Life({ study }: { readonly study: LifeStudy }) {
  const [first, ...more] = lifeLines(study)
  return (
    <>
      <OpenedWorking working={shownWorking(study.shown, study.asked.confidence)}>{first}</OpenedWorking>
      {more.map((line) => (
        <OpenedWorking key={line} working={weibullWorking(study)}>
          {line}
        </OpenedWorking>
      ))}
    </>
  )
}
