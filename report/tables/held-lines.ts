import type { DesignSpread } from '../../engine/index.ts'
import { type OpenedLine, plainLine } from './opened-line.ts'

/** Places of sizes that are held as drawn, in one line; none where every size has a tolerance. */
export function heldLines({ untolerated, design }: Pick<DesignSpread, 'untolerated' | 'design'>): readonly OpenedLine[] {
  if (untolerated.length === 0) return []
  // A general class gives nothing to sizes below half a millimetre.
  const wayOut =
    design.generalTolerance === undefined ? 'Give them a tolerance, or the design a general one' : 'Give them a tolerance'
  return [plainLine(`${untolerated.join(', ')}. ${wayOut}.`)]
}
