import { useEffect } from 'react'
import { DesignStore } from './design-store.ts'
import type { DesignState } from './open-design.ts'
import { useShared } from './shared-state.ts'

const store = new DesignStore()
let isStarted = false

/** The page's one design store with its state of now. */
export function useDesigns(): { readonly store: DesignStore; readonly state: DesignState } {
  useEffect(() => {
    if (isStarted) return
    isStarted = true
    store.start()
  }, [])
  return { store, state: useShared(store.shared) }
}
