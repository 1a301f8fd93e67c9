import { localRules, orientation } from '../../report/index.ts'

/** Facts on rules for devices; what decides stands above them. */
export function OrientationList() {
  return (
    <details>
      <summary>Rules, for orientation</summary>
      <p className="aside">{localRules}</p>
      <ul>
        {orientation.map(({ fact, date, source, known }) => (
          <li key={fact}>
            {fact}{' '}
            <span className="reason">
              {date}; {source}, {known}.
            </span>
          </li>
        ))}
      </ul>
    </details>
  )
}
