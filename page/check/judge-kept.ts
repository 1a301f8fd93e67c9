import { fetchRevision } from '../revisions/revision.ts'
import { fetchSets } from './bench/bench.ts'
import { judgeApart } from './judge-apart.ts'
import type { FromBench } from './readings.ts'

/** Has sets that are kept at the bench judged as a file of them would be, by the revision of their lot. @throws Error in words */
export async function judgeKept(bench: FromBench, serials: readonly string[]): Promise<void> {
  const { design, lot, revision } = bench
  const { text } = await fetchRevision({ name: design, number: revision })
  const kept = (await fetchSets(design, lot)).filter(({ serial }) => serials.includes(serial))
  const file = serials.length === 1 ? `serial ${serials[0]}` : `lot ${lot}`
  judgeApart({ opened: { file, text, bench }, from: { kept } })
}
