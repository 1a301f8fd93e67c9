import { useEffect, useRef } from 'react'
import { type Field, type Row, sentence, typedChange } from '../../engine/index.ts'
import { arrived, mark, useAttention } from '../state/attention.ts'
import type { DesignStore } from '../state/design-store.ts'
import { DesignField } from './design-field.tsx'
import styles from './design-tables.module.css'
import { Removal } from './removal.tsx'

/** What a row needs. */
export interface DesignRowProps {
  readonly store: DesignStore
  readonly text: string
  readonly row: Row
  /** Somebody wants to see it, or a value in it. */
  readonly isWanted: boolean
  /** What counted sets say of it. */
  readonly note?: string | undefined
}

/** One thing of the design with its values. While it has the focus the drawing marks it. */
export function DesignRow({ store, text, row, isWanted, note }: DesignRowProps) {
  const place = useRef<HTMLLIElement>(null)
  const { marked, wanted } = useAttention()
  useEffect(() => {
    if (!isWanted || wanted === undefined || place.current === null) return
    const fields = [...place.current.querySelectorAll<HTMLElement>('[data-place]')]
    const field = fields.find(({ dataset }) => dataset.place === wanted) ?? fields[0]
    place.current.scrollIntoView({ block: 'center' })
    field?.focus({ preventScroll: true })
    arrived()
  }, [isWanted, wanted])
  const take = (field: Field, typed: string): void => {
    const said = `${row.id.replaceAll('.', ' › ')}, ${field.label}: ${field.typed ?? 'not stated'} → ${typed === '' ? 'not stated' : typed}`
    store.edit({ changes: [typedChange(text, field.place, typed)], said })
  }
  const [stated, left] = [true, false].map((isStated) => row.fields.filter((field) => isStated === isShown(field)))
  return (
    <li ref={place} className={`${styles.row} ${marked === row.id ? styles.marked : ''}`} onFocus={() => mark(row.id)}>
      <h3 className={styles.thing}>{row.title}</h3>
      <div className={styles.fields}>
        {row.problems.map((problem) => (
          <p key={problem.found} className={styles.wrong}>
            {sentence('', { ...problem, place: '' })}
          </p>
        ))}
        {stated.map((field) => (
          <DesignField key={field.label} {...{ field, text, take }} />
        ))}
        {left.length === 0 ? null : (
          <details className={styles.more}>
            <summary>{left.map((field) => field.label).join(', ')}: not stated</summary>
            <div className={styles.fields}>
              {left.map((field) => (
                <DesignField key={field.label} {...{ field, text, take }} />
              ))}
            </div>
          </details>
        )}
        {note === undefined ? null : <p className={styles.note}>{note}</p>}
      </div>
      <Removal {...{ store, text, row }} />
    </li>
  )
}

/** What is left out and may be, without a problem, need not take up room. */
function isShown(field: Field): boolean {
  return field.typed !== undefined || !field.optional || field.problems.length > 0
}
