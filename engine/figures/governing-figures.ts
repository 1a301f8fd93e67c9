import type { Evaluation, Figure } from './evaluation.ts'

/** What decides about a finger, most telling first; `*` stands for a toggle or a load case. */
const patterns: readonly RegExp[] = [
  /^motion\.closes$/,
  /^return\.letsGo$/,
  /^motion\.collisionDepth$/,
  /^closed\.toggle\.[^.]+\.deadCentreMargin$/,
  /^closed\.toggle\.[^.]+\.jamAngle$/,
  /^loadCase\.[^.]+\.slipAngle$/,
  /^loadCase\.[^.]+\.holdWindow$/,
  /^return\.reserveFromRest$/,
  /^return\.margin$/,
  /^return\.reserveMoving$/,
  /^loadCase\.[^.]+\.heldBy$/,
  /^loadCase\.[^.]+\.sustainingLoad$/,
  /^loadCase\.[^.]+\.letGoUnderLoadEffort$/,
  /^loadCase\.[^.]+\.loadedMargin$/,
  /^play\.toggle\.[^.]+\.least$/,
  /^release\.effort$/,
  /^drive\.effortMost$/,
  /^closed\.drive$/,
]

/**
 * The figures that decide about a finger, without their repetitions: those that its requirements ask for, in their order, then the toggles,
 * the return, the keepers and the efforts. Figures that the design has not are left out; those without a value are kept.
 */
export function governingFigures({ design, figures }: Pick<Evaluation, 'design' | 'figures'>): readonly Figure[] {
  const byId = new Map(figures.map((figure) => [figure.id, figure]))
  const asked = design.requirements.flatMap(({ figure }) => byId.get(figure) ?? [])
  const telling = patterns.flatMap((pattern) => figures.filter(({ id }) => pattern.test(id)))
  return [...new Set([...asked, ...telling])]
}
