import type { Reading } from './reading.ts'

interface Known {
  readonly reading: Reading
  readonly known: readonly { readonly id: string }[]
  readonly what: 'parts' | 'pins' | 'stops' | 'springs'
}

/** Indices of things that are named in a list, each at most once; -1 for one that has been reported. @param place of the list */
export function indicesOf(
  place: string,
  typed: readonly string[] | undefined,
  { reading, known, what }: Known,
): readonly number[] {
  return (typed ?? []).map((name, at) => {
    const index = known.findIndex(({ id }) => id === name)
    const isFirst = typed?.indexOf(name) === at
    if (index < 0 && !reading.wasTakenOut(`${what}.${name}`)) {
      reading.unknownName(`${place}.${at}`, { typed: name, what: `one of ${what}`, known: known.map(({ id }) => id) })
    }
    if (!isFirst) reading.report({ code: 'too many', place: `${place}.${at}`, found: `${name} twice`, needed: 'each once' })
    return index
  })
}
