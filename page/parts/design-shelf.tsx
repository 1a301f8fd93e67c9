import { useRef, useState } from 'react'
import type { DesignState, DesignStore } from '../state/design-store.ts'
import { chooseTheme, currentTheme } from '../state/theme.ts'
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
              aria-current={state.shown?.name === name}
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
      <SignOut />
    </section>
  )
}
