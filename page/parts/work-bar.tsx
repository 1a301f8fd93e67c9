import { memo, useEffect } from 'react'
import type { DesignStore } from '../state/design-store.ts'
import type { History } from '../state/history.ts'
import type { Keeping } from '../state/kept-work.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { usePaced } from '../state/use-paced.ts'
import styles from './work-bar.module.css'

/** What was done to the design, the way back and forth, and whether it is kept. */
export function WorkBar({ store, open }: { readonly store: DesignStore; readonly open: OpenDesign }) {
  const { steps, position } = open.history
  const [last, next] = [steps[position - 1], steps[position]]
  // Where a hand has dragged something to is read here, not watched.
  const said = { last: usePaced(last?.said), next: usePaced(next?.said), history: usePaced(open.history) }
  useKeys(store, position)
  return (
    <section className={`${styles.bar} screen-only`} aria-label="What was done">
      <button type="button" className="plain" disabled={last === undefined} onClick={() => store.stand(position - 1)}>
        Undo{said.last === undefined ? '' : `: ${said.last}`}
      </button>
      <button type="button" className="plain" disabled={next === undefined} onClick={() => store.stand(position + 1)}>
        Do again{said.next === undefined ? '' : `: ${said.next}`}
      </button>
      <Steps store={store} history={said.history} />
      <KeptLine keeping={open.keeping} />
      {open.givenChanged ? (
        <p className={styles.given}>
          The file of this name has changed on disk since.{' '}
          <button type="button" className="plain" onClick={() => store.goOnFromFile()}>
            Go on from the file
          </button>
        </p>
      ) : null}
    </section>
  )
}

/** Every step with the way to it; hundreds may have been done. */
const Steps = memo(function Steps({ store, history }: { readonly store: DesignStore; readonly history: History }) {
  const { steps, position } = history
  if (steps.length === 0) return null
  return (
    <details className={styles.steps}>
      <summary>{steps.length === 1 ? 'One step' : `${steps.length} steps`}</summary>
      <ol>
        <Stand said="as it was opened first" isHere={position === 0} go={() => store.stand(0)} />
        {steps
          .map(({ said }, index) => ({ said, at: index + 1 }))
          .map(({ said, at }) => (
            <Stand key={at} said={said} isHere={position === at} go={() => store.stand(at)} />
          ))}
      </ol>
    </details>
  )
})

function Stand({ said, isHere, go }: { readonly said: string; readonly isHere: boolean; readonly go: () => void }) {
  return (
    <li aria-current={isHere ? 'step' : undefined}>
      <button type="button" className="plain" onClick={go}>
        {said}
      </button>
    </li>
  )
}

function KeptLine({ keeping }: { readonly keeping: Keeping }) {
  const words = keptWords(keeping)
  return words === '' ? null : (
    <span className={styles.kept} data-testid="kept" data-keeping={keeping.kind}>
      {words}
    </span>
  )
}

function keptWords(keeping: Keeping): string {
  switch (keeping.kind) {
    case 'not begun':
      return ''
    case 'from disk':
      return 'not kept: this file was opened from disk'
    case 'waiting':
      return 'being kept …'
    case 'kept':
      return `kept at ${keeping.at.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit', hour12: false })}`
    case 'not kept':
      return `not kept: ${keeping.why}`
    case 'other page':
      return 'not kept: another page was faster'
  }
}

/** The usual keys, except where somebody types: there they belong to the text. */
function useKeys(store: DesignStore, position: number): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return
      const key = event.key.toLowerCase()
      const isForth = key === 'y' || (key === 'z' && event.shiftKey)
      if (key !== 'z' && key !== 'y') return
      event.preventDefault()
      store.stand(isForth ? position + 1 : position - 1)
    }
    addEventListener('keydown', press)
    return () => removeEventListener('keydown', press)
  }, [store, position])
}

/** In a field that was changed and not taken, the keys undo what was typed. */
function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement && target.type === 'text' && target.dataset.changed === 'true'
}
