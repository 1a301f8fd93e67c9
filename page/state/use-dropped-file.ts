import { useEffect } from 'react'
import type { DesignStore } from './design-store.ts'

/** Opens a file that is dropped anywhere on the page. */
export function useDroppedFile(store: DesignStore): void {
  useEffect(() => {
    const allow = (event: DragEvent): void => event.preventDefault()
    const drop = (event: DragEvent): void => {
      event.preventDefault()
      const file = event.dataTransfer?.files[0]
      if (file !== undefined) store.openFile(file)
    }
    addEventListener('dragover', allow)
    addEventListener('drop', drop)
    return () => {
      removeEventListener('dragover', allow)
      removeEventListener('drop', drop)
    }
  }, [store])
}
