import { sharedState, useShared } from '../../state/shared-state.ts'
import { sendEntries } from './bench.ts'

/** Who stands at the bench: typed once, for everything that is kept from there. */
export const whoNow = sharedState('')

/** Who stands at the bench. */
export const useWho = (): string => useShared(whoNow)

/** How often something was kept on this page that is no reading: whoever shows the bench book looks anew. */
export const keptCount = sharedState(0)

/** Keeps one entry of a design's bench book under who stands there. @throws Error in words; then nothing is kept */
export async function keepEntry(design: string, entry: object): Promise<void> {
  const who = whoNow.now()
  if (who.trim() === '') throw new Error('Not kept: say above who stands at the bench.')
  await sendEntries(design, { who, entries: [entry] })
  keptCount.set(keptCount.now() + 1)
}
