import { useMemo, useState } from 'react'
import { type DesignSpreadAsked, type OfferedSize, offeredSizes, readOffer, readVariation, sentence } from '../../engine/index.ts'
import { drawnText } from '../../report/index.ts'
import { useUnits } from '../state/units.ts'
import styles from './spread.module.css'

/** What a shop offers instead of a drawn tolerance: it is judged with the next count. An offer that cannot be read says why, and is not. */
export function OfferForm(about: {
  readonly text: string
  readonly asked: DesignSpreadAsked
  readonly change: (asked: DesignSpreadAsked) => void
}) {
  const { text, asked, change } = about
  const units = useUnits()
  const variation = useMemo(() => readVariation(text).value, [text])
  const sizes = useMemo(() => (variation ? offeredSizes(variation) : []), [variation])
  const [name, setName] = useState('')
  const [typed, setTyped] = useState('')
  const size = sizes.find((one) => one.name === name) ?? sizes[0]
  if (!variation || !size) return null
  const [problem] = typed === '' ? [] : (readOffer(variation, `${size.name}=${typed}`).problems ?? [])
  const offer = (of: OfferedSize, tolerance: string): void => {
    setName(of.name)
    setTyped(tolerance)
    const asking = `${of.name}=${tolerance}`
    const { offers: _, ...rest } = asked
    change(readOffer(variation, asking).value ? { ...rest, offers: [asking] } : rest)
  }
  return (
    <form className={`${styles.asked} screen-only`} onSubmit={(event) => event.preventDefault()}>
      <label>
        The shop offers, for{' '}
        <select value={size.name} onChange={({ target }) => offer(sizes.find((one) => one.name === target.value) ?? size, typed)}>
          {sizes.map((one) => (
            <option key={one.name} value={one.name}>
              {one.words}
            </option>
          ))}
        </select>
      </label>
      <label>
        instead of {drawnText(size, units)}{' '}
        <input
          type="text"
          value={typed}
          placeholder={size.isZone ? '0.04 mm' : '±0.03 mm'}
          onChange={({ target }) => offer(size, target.value)}
        />
      </label>
      {problem === undefined ? null : (
        <p className="aside" role="status">
          {sentence('', problem)}
        </p>
      )}
    </form>
  )
}
