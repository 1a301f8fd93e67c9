import type { Design, Question } from '../../engine/index.ts'
import { forceChoices, sameLoad } from '../state/force-choice.ts'
import styles from './force-chooser.module.css'

/** Chooses the load, and whether it is held or closed against, in plain words. */
export function ForceChooser(about: {
  readonly design: Design
  readonly chosen: Question
  readonly choose: (question: Question) => void
}) {
  const { design, chosen, choose } = about
  return (
    <div className={styles.chooser}>
      <fieldset>
        <legend>Forces shown</legend>
        {forceChoices(design).map(({ question, words }) => (
          <label key={words}>
            <input type="radio" name="forces" checked={sameLoad(question, chosen)} onChange={() => choose(question)} />
            {words}
          </label>
        ))}
      </fieldset>
      {chosen.kind === 'return' ? null : (
        <fieldset>
          <legend>while the wearer</legend>
          {(['hold', 'close'] as const).map((kind) => (
            <label key={kind}>
              <input type="radio" name="sense" checked={chosen.kind === kind} onChange={() => choose({ ...chosen, kind })} />
              {kind === 'hold' ? 'holds it' : 'closes against it'}
            </label>
          ))}
        </fieldset>
      )}
    </div>
  )
}
