import { type FormEvent, useState } from 'react'
import type { DesignStore } from '../state/design-store.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { bringInDesign, type NewDesign } from './bring-in-design.ts'
import { DeedLine } from './deed-line.tsx'
import { FileButton } from './file-button.tsx'
import styles from './revisions.module.css'
import { saveFile } from './save-file.ts'
import { useDeed } from './use-deed.ts'

/** The design as its file: saved as it stands on the page, and a file that comes into the store as a design of its own. */
export function DesignFiles({ store, open }: { readonly store: DesignStore; readonly open: OpenDesign }) {
  const deed = useDeed()
  const [coming, setComing] = useState<NewDesign>()
  const { name, history } = open
  const save = () =>
    deed.run('being saved …', async () => {
      saveFile(new Blob([history.text], { type: 'application/json' }), `${name}.json`)
      return `Saved as ${name}.json, as it stands now.`
    })
  const read = (file: File) =>
    deed.run('being read …', async () => {
      setComing({ name: file.name.replace(/\.json$/i, ''), text: await file.text() })
      return ''
    })
  const bringIn = (event: FormEvent): void => {
    event.preventDefault()
    if (coming === undefined) return
    void deed.run('being brought in …', async () => {
      const answer = await bringInDesign(coming)
      if (!answer.came) {
        if (answer.free !== undefined) setComing({ ...coming, name: answer.free })
        throw new Error(`Not brought in: ${answer.why}`)
      }
      setComing(undefined)
      await store.list()
      await store.openNamed(coming.name)
      return `${coming.name} is in the store now and opens here.`
    })
  }
  return (
    <section aria-labelledby="design-file" className="screen-only">
      <h2 id="design-file">This design as a file</h2>
      <p className={styles.ways}>
        <button type="button" className="plain" onClick={save}>
          Save {name} as a file
        </button>
        {open.keeping.kind === 'from disk' ? (
          <button type="button" className="plain" onClick={() => setComing({ name, text: history.text })}>
            Bring {name} into the store …
          </button>
        ) : null}
        <FileButton
          words="Bring a design file in …"
          label="Design file to bring in"
          accept=".json,application/json"
          take={read}
        />
      </p>
      {coming === undefined ? null : (
        <form onSubmit={bringIn} className={styles.coming} noValidate>
          <label htmlFor="coming-name">Its name in the store</label>
          <input
            id="coming-name"
            type="text"
            value={coming.name}
            autoComplete="off"
            onChange={({ target }) => setComing({ ...coming, name: target.value })}
          />
          <button type="submit" className="plain">
            Bring it in
          </button>
          <button type="button" className="plain" onClick={() => setComing(undefined)}>
            Leave it
          </button>
        </form>
      )}
      <DeedLine {...deed} />
    </section>
  )
}
