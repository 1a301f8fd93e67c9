import styles from './revisions.module.css'
import type { DeedState } from './use-deed.ts'

/** What became of a deed, where it was asked for. */
export function DeedLine({ doing, done, fault }: DeedState) {
  return (
    <>
      <p role="status" className={styles.said}>
        {doing ?? done}
      </p>
      {fault === undefined ? null : (
        <p role="alert" className={styles.fault}>
          {fault}
        </p>
      )}
    </>
  )
}
