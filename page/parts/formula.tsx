import temml from 'temml'
import styles from './working.module.css'

/** A formula in TeX, set as mathematics. Style attributes are left out because the page's policy forbids them. */
export function Formula({ formula }: { readonly formula: string }) {
  const mathematics = temml.renderToString(formula, { displayMode: true, throwOnError: false }).replaceAll(/ style="[^"]*"/g, '')
  return <div className={styles.formula} dangerouslySetInnerHTML={{ __html: mathematics }} />
}
