import { useState } from 'react'
import type { BenchTest, Design } from '../../../engine/index.ts'
import { ProblemList } from '../../parts/refusal.tsx'
import { DeedLine } from '../../revisions/deed-line.tsx'
import { FileButton } from '../../revisions/file-button.tsx'
import { useDeed } from '../../revisions/use-deed.ts'
import type { DesignStore } from '../../state/design-store.ts'
import { isKeptHere, type OpenDesign } from '../../state/open-design.ts'
import styles from '../check.module.css'
import { ComparedTests } from './compared-tests.tsx'
import { KeptMeasured } from './kept-measured.tsx'
import { LifeSection } from './life-section.tsx'
import { type OpenedTests, openTests, takeKeptTests, useTests } from './tests-now.ts'

interface About {
  readonly store: DesignStore
  readonly open: OpenDesign
  readonly design: Design
  readonly text: string
}

/** What rigs found, from a file or from the bench book: against the prediction, and what runs show of a life. */
export function BenchTests({ store, open, design, text }: About) {
  const opened = useTests()
  const deed = useDeed()
  const take = (): void => void deed.run('being fetched …', () => takeKeptTests(open.name, text))
  return (
    <section aria-labelledby="tests">
      <h2 id="tests">Bench tests</h2>
      <p className={`screen-only ${styles.doors}`}>
        {isKeptHere(open) ? (
          <button type="button" className="plain" disabled={deed.doing !== undefined} onClick={take}>
            Take the tests of the bench
          </button>
        ) : null}
        <FileButton
          words="Open a file of tests …"
          label="File of tests"
          accept=".csv,text/csv"
          take={(file) => void openTests(file, design)}
        />
      </p>
      <DeedLine {...deed} />
      <p className="aside screen-only">
        A table with serial, figure, found and uncertainty is held against the prediction; one with serial, ran and outcome (did,
        did not) says what runs show.
      </p>
      {opened === undefined ? null : opened.problems.length > 0 ? (
        <ProblemList file={opened.from} problems={opened.problems} />
      ) : (
        <Opened key={opened.from} {...{ store, design, text, opened }} />
      )}
    </section>
  )
}

function Opened(about: Omit<About, 'open'> & { readonly opened: OpenedTests }) {
  const { store, design, text, opened } = about
  const [measured, setMeasured] = useState<readonly BenchTest[]>([])
  const tests = [...opened.tests, ...measured]
  return (
    <>
      {opened.kept.length === 0 ? null : <KeptMeasured kept={opened.kept} design={design} put={setMeasured} />}
      {tests.length === 0 ? null : <ComparedTests {...{ store, design, text, tests }} from={opened.from} />}
      <LifeSection opened={opened} />
    </>
  )
}
