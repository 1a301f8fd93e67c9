import { memo, useMemo } from 'react'
import { canBeMade, type ShopDesign } from '../../engine/index.ts'
import { doubtRows, nothingDoubted } from '../../report/index.ts'
import { goTo } from '../state/attention.ts'

/** What a shop will stumble over; each place leads to where it stands in the design. */
export const ShopDoubts = memo(function ShopDoubts({ shop }: { readonly shop: ShopDesign }) {
  const rows = useMemo(() => doubtRows(canBeMade(shop)), [shop])
  return (
    <section aria-labelledby="doubts">
      <h2 id="doubts">Can it be made?</h2>
      {rows.length === 0 ? <p className="aside">{nothingDoubted}</p> : null}
      <ul>
        {rows.map(({ places, found, needed, wayOut }) => (
          <li key={`${places[0]} ${found}`}>
            {places.map((place) => (
              <span key={place}>
                <button type="button" className="plain" onClick={() => goTo(place)}>
                  {place}
                </button>{' '}
              </span>
            ))}
            <span className="reason">
              {found}. Needed: {needed}. {wayOut}
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
})
