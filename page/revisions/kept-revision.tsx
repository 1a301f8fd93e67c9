import { useState } from 'react'
import { keptFigureRows, keptFindingRows } from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { ProblemList } from '../parts/refusal.tsx'
import { Value } from '../parts/value.tsx'
import { useUnits } from '../state/units.ts'
import type { Revision, RevisionName } from './revision.ts'
import styles from './revisions.module.css'
import { useRevision } from './use-revision.ts'

/** What figures are called, by their ids. */
export type Titles = ReadonlyMap<string, string>

/** A revision to be read: findings, figures and text as they were kept. Nothing of it can be changed. */
export function KeptRevision({ name, number, titles }: RevisionName & { readonly titles: Titles }) {
  const [isOpen, setOpen] = useState(false)
  const { revision, fault } = useRevision(name, isOpen ? number : undefined)
  return (
    <details className={styles.read} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>Read revision {number}</summary>
      {fault === undefined ? null : (
        <p role="alert" className={styles.fault}>
          {fault}
        </p>
      )}
      {isOpen && revision !== undefined ? <AsKept {...{ name, revision, titles }} /> : null}
    </details>
  )
}

function AsKept(about: { readonly name: string; readonly revision: Revision; readonly titles: Titles }) {
  const { name, revision, titles } = about
  const reader = { units: useUnits(), titles }
  const figures = keptFigureRows(revision.figures, reader)
  return (
    <>
      <p className="aside">As {revision.engine} found it when it was kept.</p>
      {revision.problems.length === 0 ? null : <ProblemList file={name} problems={revision.problems} />}
      <table className="rows findings">
        <caption className="visually-hidden">Findings of revision {revision.number}</caption>
        <thead>
          <tr>
            <th scope="col">Required</th>
            <th scope="col" className="number">
              Found
            </th>
            <th scope="col">Needed</th>
            <th scope="col">Verdict</th>
          </tr>
        </thead>
        <tbody>
          {keptFindingRows(revision.findings, reader).map(({ id, title, found, needed, verdict, why }) => (
            <tr key={id}>
              <th scope="row">
                {title}
                {why === undefined ? null : <span className="reason">{why}</span>}
              </th>
              <td className="number" data-label="Found">
                {found === undefined ? 'none' : <Value value={found} />}
              </td>
              <td data-label="Needed">{needed}</td>
              <td data-label="Verdict">
                <MarkWithWord answer={verdict} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <details>
        <summary>Its {figures.length} figures</summary>
        <table className="rows compact">
          <caption className="visually-hidden">Figures of revision {revision.number}</caption>
          <tbody>
            {figures.map(({ id, title, value }) => (
              <tr key={id}>
                <th scope="row">{title}</th>
                <td className="number">{value === undefined ? <span className="none">none</span> : <Value value={value} />}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
      <details>
        <summary>Its text</summary>
        <pre className={styles.text}>{revision.text}</pre>
      </details>
    </>
  )
}
