import { useRef, useState } from 'react'
import { type DrawingsAsked, packName } from '../../report/index.ts'
import { DeedLine } from '../revisions/deed-line.tsx'
import { saveFile } from '../revisions/save-file.ts'
import { useDeed } from '../revisions/use-deed.ts'
import { fetchPack, type PackStep } from './fetch-pack.ts'

interface Packed {
  readonly text: string
  readonly name: string
  readonly asked: DrawingsAsked
}

/** Has all that goes to the shop made and saves it as one file; says how far that is, and stops it. */
export function SavePack({ text, name, asked }: Packed) {
  const deed = useDeed()
  const [step, setStep] = useState<PackStep>()
  const stop = useRef<AbortController>(undefined)
  const save = () => {
    const stopping = new AbortController()
    const { signal } = stopping
    stop.current = stopping
    setStep(undefined)
    return deed.run('The pack is being made …', async () => {
      try {
        const { zip, left } = await fetchPack({ text, name, asked, onStep: setStep, signal })
        const file = packName(name, asked.revision)
        saveFile(zip, file)
        return [`Saved as ${file}, with a list of checksums.`, ...left].join(' ')
      } catch (reason) {
        if (signal.aborted) return 'Stopped; nothing was saved.'
        throw reason
      }
    })
  }
  const isGoing = deed.doing !== undefined
  return (
    <div className="screen-only">
      <p>
        {isGoing ? (
          <button type="button" className="plain" onClick={() => stop.current?.abort()}>
            Stop
          </button>
        ) : (
          <button type="button" className="plain" onClick={save}>
            Save all that goes to the shop
          </button>
        )}{' '}
        {isGoing && step !== undefined ? <progress value={step.done} max={step.of} aria-label="Share that is done" /> : null}
      </p>
      <DeedLine {...deed} {...(isGoing && step !== undefined && { doing: stepWords(step) })} />
      <p className="aside">
        One zip: drawings and coating sheets as SVG and PDF, solids as STEP and STL, parts list, inspection plan and a note to the
        coater. The same design gives the same file.
      </p>
    </div>
  )
}

function stepWords({ doing, done, remaining_s }: PackStep): string {
  const left = remaining_s === undefined ? '' : `, about ${remaining_s} s to go`
  return `Being made: ${doing}, ${done} %${left}`
}
