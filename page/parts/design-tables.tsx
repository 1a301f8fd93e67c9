import { memo, useEffect, useMemo, useRef, useState } from 'react'
import { editSheet, type Section } from '../../engine/index.ts'
import { useAttention } from '../state/attention.ts'
import type { DesignStore } from '../state/design-store.ts'
import { AdditionForms } from './addition-forms.tsx'
import { DesignRow } from './design-row.tsx'
import styles from './design-tables.module.css'

/** Every value of the design as tables, section by section; each is changed where it stands. */
export const DesignTables = memo(function DesignTables({ store, text }: { readonly store: DesignStore; readonly text: string }) {
  const { sections } = useMemo(() => editSheet(text), [text])
  return (
    <section aria-labelledby="values" className={`${styles.tables} screen-only`}>
      <h2 id="values">The design, value by value</h2>
      <p className="aside">
        Type a quantity such as 3 mm or 1/4 in, or an expression over the dimensions. Enter takes it, Escape gives back what stood
        there.
      </p>
      {sections.map((section) => (
        <SheetSection key={section.id} {...{ store, text, section }} />
      ))}
    </section>
  )
})

interface SheetSectionProps {
  readonly store: DesignStore
  readonly text: string
  readonly section: Section
}

function SheetSection({ store, text, section }: SheetSectionProps) {
  const [isOpen, setOpen] = useState(false)
  const { wanted } = useAttention()
  const isWanted = wanted !== undefined && section.rows.some(({ id }) => id === wanted)
  const place = useRef<HTMLDetailsElement>(null)
  useEffect(() => {
    if (isWanted) setOpen(true)
  }, [isWanted])
  const count = section.rows.length
  if (count === 0 && section.adds.length === 0) return null
  return (
    <details ref={place} className={styles.section} open={isOpen} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        {section.title} <span className="hint">{count === 0 ? 'none' : count === 1 ? '' : count}</span>
      </summary>
      {isOpen ? (
        <>
          <ul className={styles.rows}>
            {section.rows.map((row) => (
              <DesignRow key={row.id} {...{ store, text, row }} />
            ))}
          </ul>
          <AdditionForms {...{ store, text }} kinds={section.adds} {...partOf(section)} />
        </>
      ) : null}
    </details>
  )
}

/** The part that a section is about. */
function partOf({ id }: Section): { readonly part?: string } {
  return id.startsWith('parts.') ? { part: id.slice('parts.'.length) } : {}
}
