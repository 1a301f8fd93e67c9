/** The questions whose answers stand in an evaluation. */
export type QuestionName = 'motion' | 'hold'

/** Whether a figure answers Motion: the travel and how the finger stands; everything else answers Hold. */
export function questionOf(figureId: string): QuestionName {
  const motion = /^(motion|open)\.|^closed\.(drive|joint|tip)|\.deadCentreMargin$|^play\./
  return motion.test(figureId) ? 'motion' : 'hold'
}
