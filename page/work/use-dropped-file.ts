import { useEffect } from 'react'

/** Opens a file that is dropped anywhere on the page. */
export function useDroppedFile(open: (file: File) => void): void {
  useEffect(() => {
    const allow = (event: DragEvent): void => event.preventDefault()
    const drop = (event: DragEvent): void => {
      event.preventDefault()
      const file = event.dataTransfer?.files[0]
      if (file !== undefined) open(file)
    }
    addEventListener('dragover', allow)
    addEventListener('drop', drop)
    return () => {
      removeEventListener('dragover', allow)
      removeEventListener('drop', drop)
    }
  }, [open])
}
