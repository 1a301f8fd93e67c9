/**
 * What a step of each input does to each governing figure: the document is changed by the step up and down, each is read and evaluated in
 * full, and half of the difference is the change (central difference). Where only one of the two gives a value, the difference from the
 * design itself is taken and it is said which. Nothing is linearised but what one step does.
 */

import type { Change } from '../design/edit/change.ts'
import { changeDocument } from '../design/edit/change-document.ts'
import { deskOf } from '../design/edit/desk.ts'
import type { Problem } from '../design/problem.ts'
import { readDesign } from '../design/read-design.ts'
import { evaluate } from '../evaluate.ts'
import type { Evaluation, Figure } from '../figures/evaluation.ts'
import { governingFigures } from '../figures/governing-figures.ts'
import type { SensitivityInput } from './sensitivity-input.ts'
import { sensitivityInputs } from './sensitivity-inputs.ts'

/** What a step up does to one figure. */
export interface FigureChange {
  readonly figure: string
  /** In the figure's inside unit; absent when the figure has no value on either side, or is not a number. */
  readonly change?: number
  /** Only this side of the step has a value: the difference from the design itself. */
  readonly onlySide?: 'up' | 'down'
  /** Of yes or no and words: what it becomes on a side where that is something else; undefined where it is not known any more. */
  readonly becomes?: readonly { readonly side: 'up' | 'down'; readonly value: Figure['value'] }[]
}

/** What steps of one input do. */
export interface Sensitivity {
  readonly input: SensitivityInput
  readonly changes: readonly FigureChange[]
  /** Why a step is refused, or the finger cannot be moved after it; absent for steps that can be made. */
  readonly refused: { readonly up?: readonly Problem[]; readonly down?: readonly Problem[] }
  /** The requirement of whose margin one step takes the largest share, either way; absent when it touches none. */
  readonly takes?: { readonly requirement: string; readonly share: number }
}

/** How far the work is, with what was found last. */
export interface SensitivityProgress {
  readonly done: number
  readonly of: number
  readonly found: Sensitivity
}

/**
 * Works through the inputs of a document one by one: each is yielded when it is found, so that the caller can show it, stop or go on.
 *
 * @param text of a document without problems; one with problems gives nothing
 * @returns all that were found, in the order of the inputs
 */
export function* sensitivities(text: string): Generator<SensitivityProgress, readonly Sensitivity[]> {
  const design = readDesign(text).value
  if (!design) return []
  const plain = evaluate(design)
  const inputs = sensitivityInputs(deskOf(text))
  const all: Sensitivity[] = []
  for (const [index, input] of inputs.entries()) {
    const found = sensitivityOf(input, text, plain)
    all.push(found)
    yield { done: index + 1, of: inputs.length, found }
  }
  return all
}

function sensitivityOf(input: SensitivityInput, text: string, plain: Evaluation): Sensitivity {
  const [up, down] = [stepped(text, input.up), stepped(text, input.down)]
  const [of, ofUp, ofDown] = [plain, up.evaluation, down.evaluation].map(figuresById)
  const changes = governingFigures(plain).map(({ id }) =>
    changeOf(id, { plain: of.get(id), up: ofUp.get(id), down: ofDown.get(id) }),
  )
  const refused = {
    ...(newIn(plain, up).length > 0 && { up: newIn(plain, up) }),
    ...(newIn(plain, down).length > 0 && { down: newIn(plain, down) }),
  }
  const takes = takenFrom(plain, changes)
  return { input, changes, refused, ...(takes && { takes }) }
}

interface Stepped {
  readonly evaluation?: Evaluation
  readonly problems: readonly Problem[]
}

function stepped(text: string, changes: readonly Change[]): Stepped {
  const { value, problems = [] } = readDesign(changeDocument(text, changes))
  if (!value) return { problems }
  const evaluation = evaluate(value)
  return { evaluation, problems: evaluation.problems }
}

function newIn({ problems: had }: Evaluation, { problems }: Stepped): readonly Problem[] {
  return problems.filter(({ code, place }) => !had.some((one) => one.code === code && one.place === place))
}

function figuresById(evaluation: Evaluation | undefined): ReadonlyMap<string, Figure> {
  return new Map(evaluation?.figures.map((figure) => [figure.id, figure]))
}

interface Sides {
  readonly plain: Figure | undefined
  readonly up: Figure | undefined
  readonly down: Figure | undefined
}

function changeOf(figure: string, { plain, up, down }: Sides): FigureChange {
  const [was, more, less] = [plain?.value, up?.value, down?.value]
  if (typeof more === 'number' && typeof less === 'number') return { figure, change: (more - less) / 2 }
  if (typeof more === 'number' && typeof was === 'number') return { figure, change: more - was, onlySide: 'up' }
  if (typeof less === 'number' && typeof was === 'number') return { figure, change: was - less, onlySide: 'down' }
  if (typeof was === 'number') return { figure }
  const sides = [
    { side: 'up', value: more, isThere: up !== undefined },
    { side: 'down', value: less, isThere: down !== undefined },
  ] as const
  const becomes = sides.filter(({ value, isThere }) => isThere && value !== was).map(({ side, value }) => ({ side, value }))
  return becomes.length > 0 ? { figure, becomes } : { figure }
}

function takenFrom({ findings }: Evaluation, changes: readonly FigureChange[]): Sensitivity['takes'] {
  const byFigure = new Map(changes.map((one) => [one.figure, one.change ?? 0]))
  const shares = findings.flatMap(({ requirement, margin }) => {
    const change = byFigure.get(requirement.figure) ?? 0
    return margin === undefined || margin === 0 || change === 0
      ? []
      : [{ requirement: requirement.id, share: Math.abs(change / margin) }]
  })
  return shares.sort((one, other) => other.share - one.share)[0]
}
