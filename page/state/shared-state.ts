import { useSyncExternalStore } from 'react'

/** A state that several places of the page look at: whoever listens is told of each change. */
export interface SharedState<T> {
  readonly now: () => T
  readonly set: (next: T) => void
  /** Takes the next value and tells nobody yet: somebody will soon set another one upon it. */
  readonly hold: (next: T) => void
  readonly subscribe: (listener: () => void) => () => void
}

/** A shared state with its first value. */
export function sharedState<T>(first: T): SharedState<T> {
  const listeners = new Set<() => void>()
  let state = first
  return {
    now: () => state,
    set: (next) => {
      state = next
      for (const listener of listeners) listener()
    },
    hold: (next) => {
      state = next
    },
    subscribe: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
  }
}

/** The value of now, followed as it changes. */
export function useShared<T>({ subscribe, now }: SharedState<T>): T {
  return useSyncExternalStore(subscribe, now)
}
