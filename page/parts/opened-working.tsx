import type { ReactNode } from 'react'
import type { Working as EngineWorking } from '../../engine/index.ts'
import { Working } from './working.tsx'

/** Words that open to how they were worked out. */
export function OpenedWorking({ working, children }: { readonly working: EngineWorking; readonly children: ReactNode }) {
  return (
    <details>
      <summary>{children}</summary>
      <Working working={working} />
    </details>
  )
}
