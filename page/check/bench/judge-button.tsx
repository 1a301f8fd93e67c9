import { DeedLine } from '../../revisions/deed-line.tsx'
import { useDeed } from '../../revisions/use-deed.ts'
import { judgeKept } from '../judge-kept.ts'
import type { FromBench } from '../readings.ts'

/** Has serial numbers judged with all that follows: yield, what each decision comes to, the lot, the first-article sheet. */
export function JudgeButton(about: { readonly words: string; readonly bench: FromBench; readonly serials: readonly string[] }) {
  const { words, bench, serials } = about
  const deed = useDeed()
  const judge = (): void =>
    void deed.run('being judged …', async () => {
      await judgeKept(bench, serials)
      return 'It stands below, as measured.'
    })
  return (
    <div className="screen-only">
      <button type="button" className="plain" disabled={serials.length === 0 || deed.doing !== undefined} onClick={judge}>
        {words}
      </button>
      <DeedLine {...deed} />
    </div>
  )
}
