import { useMemo } from 'react'
import { type StarterSet, starterRequirements, starterRisks } from '../../engine/index.ts'
import { starterWords } from '../../report/index.ts'
import type { DesignStore } from '../state/design-store.ts'

/** Starting points, put into the design as one step each that can be undone. */
export function Starters({ store, text }: { readonly store: DesignStore; readonly text: string }) {
  const sets = useMemo(() => {
    const all: readonly (readonly [string, StarterSet | undefined])[] = [
      ['what is usually asked', starterRequirements(text)],
      ['the usual risks', starterRisks(text)],
    ]
    return all.flatMap(([words, set]) => (set === undefined ? [] : [{ words, set }]))
  }, [text])
  if (sets.length === 0) return null
  return (
    <section aria-labelledby="starters" className="screen-only">
      <h2 id="starters">Starting points</h2>
      <p className="aside">
        Lists for body-powered fingers, from published facts where there are some. Every row is marked for review: change it or
        take it out. Nothing that stands in the design is written over.
      </p>
      {sets.map(({ words, set }) => (
        <p key={words}>
          <button
            type="button"
            className="plain"
            onClick={() => store.edit({ changes: set.changes, said: `added ${words}, to be reviewed` })}
          >
            Add {words}: {starterWords(set)}
          </button>
        </p>
      ))}
    </section>
  )
}
