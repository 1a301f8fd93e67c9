import { memo, useEffect, useMemo, useState } from 'react'
import { type DesignSpread, editSheet, type Section } from '../../engine/index.ts'
import { sizeNotes } from '../../report/index.ts'
import { useAttention } from '../state/attention.ts'
import type { DesignStore } from '../state/design-store.ts'
import { AdditionForms } from './addition-forms.tsx'
import { DesignRow } from './design-row.tsx'
import styles from './design-tables.module.css'

/** Every value of the design as tables, section by section; each is changed where it stands. Counted sets say in each row what it contributes. */
export const DesignTables = memo(function DesignTables(about: {
  readonly store: DesignStore
  readonly text: string
  /** Sets of this very text. */
  readonly counted?: DesignSpread | undefined
}) {
  const { store, text, counted } = about
  const { wanted } = useAttention()
  const { sections } = useMemo(() => editSheet(text), [text])
  const notes = useMemo(
    () =>
      counted === undefined
        ? undefined
        : sizeNotes(
            counted,
            sections.flatMap(({ rows }) => rows.map(({ id }) => id)),
          ),
    [counted, sections],
  )
  return (
    <section aria-labelledby="values" className={`${styles.tables} screen-only`}>
      <h2 id="values">The design, value by value</h2>
      <p className="aside">
        Type a quantity such as 3 mm or 1/4 in, or an expression over the dimensions. Enter takes it, Escape gives back what stood
        there.
      </p>
      {sections.map((section) => (
        <SheetSection key={section.id} {...{ store, text, section, notes }} wanted={rowOf(section, wanted)} />
      ))}
    </section>
  )
})

interface SheetSectionProps {
  readonly store: DesignStore
  readonly text: string
  readonly section: Section
  /** The row that somebody wants to see, when it is one of this section. */
  readonly wanted: string | undefined
  readonly notes: ReadonlyMap<string, string> | undefined
}

function SheetSection({ store, text, section, wanted, notes }: SheetSectionProps) {
  const [isOpen, setOpen] = useState(false)
  useEffect(() => {
    if (wanted !== undefined) setOpen(true)
  }, [wanted])
  const count = section.rows.length
  if (count === 0 && section.adds.length === 0) return null
  return (
    <details className={styles.section} open={isOpen} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        {section.title} <span className="hint">{count === 0 ? 'none' : count === 1 ? '' : count}</span>
      </summary>
      {isOpen ? (
        <>
          <ul className={styles.rows}>
            {section.rows.map((row) => (
              <DesignRow key={row.id} {...{ store, text, row }} isWanted={row.id === wanted} note={notes?.get(row.id)} />
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

/** The row of a section in which a place stands: of two that hold it the inner one. */
function rowOf({ rows }: Section, wanted: string | undefined): string | undefined {
  const holding = rows.filter(({ id }) => wanted === id || wanted?.startsWith(`${id}.`))
  return holding.toSorted((one, other) => other.id.length - one.id.length)[0]?.id
}
