import { useRef, useState } from 'react'
import type { DesignStore } from '../state/design-store.ts'
import type { DesignState } from '../state/open-design.ts'
import { chooseTheme, currentTheme } from '../state/theme.ts'
import { chooseUnits, useUnits } from '../state/units.ts'
import styles from './design-shelf.module.css'
import { SignOut } from './sign-out.tsx'

/** Which design is open, another one from the list or from disk, and the paper. */
export function DesignShelf({ store, state }: { readonly store: DesignStore; readonly state: DesignState }) {
  const file = useRef<HTMLInputElement>(null)
  const [theme, setTheme] = useState(currentTheme)
  const other = theme === 'light' ? 'dark' : 'light'
  return (
    <section className={styles.shelf} aria-labelledby="designs">
      <h2 id="designs">Designs</h2>
      <ul>
        {state.names.map((name) => (
          <li key={name}>
            <button
              type="button"
              className="plain"
              aria-current={state.open?.name === name}
              onClick={() => store.openNamed(name)}
            >
              {name}
            </button>
          </li>
        ))}
        <li>
          <button type="button" className="plain" onClick={() => file.current?.click()}>
            Open a file …
          </button>
          <input
            ref={file}
            type="file"
            accept=".json,application/json"
            className="visually-hidden"
            aria-label="Design file"
            tabIndex={-1}
            onChange={({ target }) => {
              const [chosen] = target.files ?? []
              if (chosen !== undefined) store.openFile(chosen)
              target.value = ''
            }}
          />
        </li>
      </ul>
      <button
        type="button"
        className="plain"
        onClick={() => {
          chooseTheme(other)
          setTheme(other)
        }}
      >
        {other === 'dark' ? 'Dark paper' : 'Light paper'}
      </button>
      <UnitsChooser />
      <SignOut />
    </section>
  )
}

const SYSTEMS = [
  { units: 'metric', words: 'mm and N' },
  { units: 'inch', words: 'inch and lbf' },
] as const

/** What everything is shown in. What is typed and stored stays as it is. */
function UnitsChooser() {
  const chosen = useUnits()
  return (
    <fieldset className={styles.units}>
      <legend>Shown in</legend>
      {SYSTEMS.map(({ units, words }) => (
        <label key={units}>
          <input type="radio" name="units" checked={units === chosen} onChange={() => chooseUnits(units)} />
          {words}
        </label>
      ))}
    </fieldset>
  )
}
