/** Work that is done when it is first asked for, and then remembered. */
export function once<Result>(work: () => Result): () => Result {
  let done: { readonly result: Result } | undefined
  return () => {
    done ??= { result: work() }
    return done.result
  }
}
