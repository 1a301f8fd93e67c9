import type { DesignStore } from '../state/design-store.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { bringInDesign, type NewDesign } from './bring-in-design.ts'
import { DeedLine } from './deed-line.tsx'
import { useDeed } from './use-deed.ts'

interface CopyOfMineProps {
  readonly store: DesignStore
  readonly open: OpenDesign
  /** Told the name of the copy. */
  readonly tell: (name: string) => void
}

/** Where another page was faster: this page's text becomes a design of its own under a free name, and the other's goes on here. */
export function CopyOfMine({ store, open, tell }: CopyOfMineProps) {
  const deed = useDeed()
  const copy = () =>
    deed.run('being kept …', async () => {
      const name = await keptUnderFreeName({ name: open.name, text: open.history.text })
      await store.list()
      store.settle('theirs')
      tell(name)
      return ''
    })
  return (
    <>
      <button type="button" className="plain" disabled={deed.doing !== undefined} onClick={copy}>
        Keep this page’s as a design of its own
      </button>
      <DeedLine {...deed} />
    </>
  )
}

/** The name under which a design came in: its own is taken, so that the server is asked for a free one first. */
async function keptUnderFreeName(design: NewDesign): Promise<string> {
  const asked = await bringInDesign(design)
  if (asked.came) return design.name
  if (asked.free === undefined) throw new Error(`Not kept: ${asked.why}`)
  const answer = await bringInDesign({ ...design, name: asked.free })
  if (!answer.came) throw new Error(`Not kept: ${answer.why}`)
  return asked.free
}
