import type { ValueText } from '../../report/index.ts'

/** A number with its unit beside it in lighter ink. */
export function Value({ value }: { readonly value: ValueText }) {
  const close = value.unit === '°'
  return (
    <span className="value">
      {value.number}
      {value.unit === '' ? null : (
        <span className="unit">
          {close ? '' : ' '}
          {value.unit}
        </span>
      )}
    </span>
  )
}
