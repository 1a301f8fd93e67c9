/** The questions whose answers stand in an evaluation. */
export type QuestionName = 'motion' | 'hold' | 'strength'

/** The question that a figure answers: Motion has the travel and how the finger stands, Strength its margins; everything else is Hold. */
export function questionOf(figureId: string): QuestionName {
  if (figureId.startsWith('strength.')) return 'strength'
  const motion = /^(motion|open)\.|^closed\.(drive|joint|tip)|\.deadCentreMargin$|^play\./
  return motion.test(figureId) ? 'motion' : 'hold'
}
