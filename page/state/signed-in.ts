/** Whether the server still knows who sits here. A session ends after a working day, or with the server. */
import { sharedState, useShared } from './shared-state.ts'

const knows = sharedState(true)

/** Takes note of what the status of an answer says: 401 is that of a stranger. */
export function noteStatus(status: number): void {
  if (knows.now() !== (status !== 401)) knows.set(status !== 401)
}

/** Asks whether somebody has signed in again meanwhile, on this page or another. */
export async function isSignedIn(): Promise<boolean> {
  const { status } = await fetch('/api/session')
  noteStatus(status)
  return knows.now()
}

/** Whether the server knew who sat here when it answered last. */
export function useSignedIn(): boolean {
  return useShared(knows)
}
