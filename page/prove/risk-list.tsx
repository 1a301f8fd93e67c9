import { Fragment, memo } from 'react'
import type { RiskTextRow } from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { goTo } from '../state/attention.ts'
import styles from './prove.module.css'

/** Risks in words, each from its hazard to what is left of it; those that are not taken stand first. */
export const RiskList = memo(function RiskList({ rows }: { readonly rows: readonly RiskTextRow[] }) {
  if (rows.length === 0) return <p className="aside">No risk is named, which is no proof that there is none.</p>
  return (
    <ul className={styles.risks}>
      {rows.map((row) => (
        <RiskItem key={row.id} row={row} />
      ))}
    </ul>
  )
})

function RiskItem({ row }: { readonly row: RiskTextRow }) {
  const controls = row.controls.map(({ by, does, check }) => ['Control', `${does} (${by}) Check: ${check}`] as const)
  const lines: readonly (readonly [string, string])[] = [
    ['Sequence', row.sequence],
    ['Harm', row.harm],
    ['Before', row.before],
    ...controls,
    ['Left', `${row.left}. ${row.reason}`],
    ...row.from.map((from) => ['From', from] as const),
  ]
  return (
    <li>
      <h3 className={styles.hazard}>
        <button type="button" className="plain" onClick={() => goTo(`risks.${row.id}`)}>
          {row.hazard}
        </button>{' '}
        <MarkWithWord answer={row.verdict} word={row.says} />
      </h3>
      <dl className={styles.lines}>
        {lines.map(([term, words]) => (
          <Fragment key={words}>
            <dt>{term}</dt>
            <dd>{words}</dd>
          </Fragment>
        ))}
      </dl>
    </li>
  )
}
