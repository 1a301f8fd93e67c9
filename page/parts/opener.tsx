import styles from './opener.module.css'

/** Words that open what lies under them, and shut it again. */
export function Opener({
  words,
  isOpen,
  toggle,
}: {
  readonly words: string
  readonly isOpen: boolean
  readonly toggle: () => void
}) {
  return (
    <button type="button" className={styles.opener} aria-expanded={isOpen} onClick={toggle}>
      <span className={styles.sign} aria-hidden="true" />
      {words}
    </button>
  )
}
