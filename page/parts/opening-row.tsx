import { type ReactNode, useState } from 'react'
import type { Working as EngineWorking } from '../../engine/index.ts'
import styles from './opener.module.css'
import { Opener } from './opener.tsx'
import { Working } from './working.tsx'

/** A row of a table whose head opens how its numbers come about. `children` are its cells beside the head, `columns` counts all. */
export function OpeningRow(about: {
  readonly head: string
  readonly columns: number
  readonly workings: () => readonly EngineWorking[]
  readonly children: ReactNode
}) {
  const { head, columns, workings, children } = about
  const [isOpen, setOpen] = useState(false)
  return (
    <>
      <tr>
        <th scope="row">
          <Opener words={head} isOpen={isOpen} toggle={() => setOpen(!isOpen)} />
        </th>
        {children}
      </tr>
      {isOpen ? (
        <tr className={styles.open}>
          <td colSpan={columns}>
            {workings().map((working) => (
              <Working key={working.method} working={working} />
            ))}
          </td>
        </tr>
      ) : null}
    </>
  )
}
