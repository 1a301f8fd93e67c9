import { useMemo, useState } from 'react'
import type { Told } from '../../report/index.ts'
import { mark } from '../state/attention.ts'
import type { Grasp, Touched } from '../state/grasp.ts'
import type { OpenedQuestion } from '../state/opened-question.ts'
import { saidOf } from '../state/said.ts'
import type { FingerSeen } from '../state/use-finger-view.ts'
import { usePicture } from '../state/use-picture.ts'
import { FingerView } from './finger-view.tsx'
import { ForceChooser } from './force-chooser.tsx'
import { ForcesTable } from './forces-table.tsx'
import { TouchedLine } from './touched-line.tsx'

/** The finger at the posture of the pointer, with the forces that are asked for and what was touched in the drawing. */
export function DrawnFinger(about: OpenedQuestion & { readonly drawn: Told; readonly seen: FingerSeen }) {
  const { store, state, open, question, drawn, seen } = about
  const { pointed_ratio, asked, ask } = seen
  const [touched, setTouched] = useState<Touched>()
  const wanted = useMemo(
    () => (question === 'motion' ? { pointed_ratio } : { pointed_ratio, question: asked }),
    [question, pointed_ratio, asked],
  )
  const picture = usePicture({ drawn, came: state.drawn, asked: wanted })
  const grasp = useMemo<Grasp>(
    () => ({
      touch: (thing) => {
        setTouched(thing)
        mark(thing.rows[0]?.id)
      },
      move: ({ grip, changes, gesture }) => store.edit({ changes, said: `${grip.says}: ${saidOf(changes)}`, gesture }),
    }),
    [store],
  )
  return (
    <section aria-labelledby="finger">
      <h2 id="finger" className="visually-hidden">
        The finger
      </h2>
      {question === 'motion' ? null : <ForceChooser design={drawn.design} chosen={asked} choose={ask} />}
      {picture === undefined ? null : (
        <FingerView evaluation={drawn} text={open.history.text} sheetKey={String(open.opening)} {...{ picture, grasp }} />
      )}
      <TouchedLine touched={touched} />
      {picture?.forces === undefined ? null : <ForcesTable design={drawn.design} forces={picture.forces} />}
    </section>
  )
}
