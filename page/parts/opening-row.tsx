import { type ReactNode, useState } from 'react'
import type { Working as EngineWorking } from '../../engine/index.ts'
import styles from './opener.module.css'
import { Opener } from './opener.tsx'
import { Working } from './working.tsx'

/** A row of a table whose head opens how its numbers come about. `children` are its cells beside the head, `columns` counts all; `below` stands under the head. */
export function OpeningRow(about: {
  readonly head: string
  readonly columns: number
  readonly workings: () => readonly EngineWorking[]
  readonly below?: ReactNode
  /** Shown over its workings. */
  readonly drawing?: ReactNode
  readonly children: ReactNode
}) {
  const { head, columns, workings, below, drawing, children } = about
  const [isOpen, setOpen] = useState(false)
  return (
    <>
      <tr>
        <th scope="row">
          <Opener words={head} isOpen={isOpen} toggle={() => setOpen(!isOpen)} />
          {below === undefined || below === null ? null : <div className={styles.below}>{below}</div>}
        </th>
        {children}
      </tr>
      {isOpen ? (
        <tr className={styles.open}>
          <td colSpan={columns}>
            {drawing}
            {workings().map((working) => (
              <Working key={working.method} working={working} />
            ))}
          </td>
        </tr>
      ) : null}
    </>
  )
}
