/**
 * How the parts are turned at one posture: cosine and sine, two numbers a part. A posture is asked for some dozen points of a few parts;
 * the two functions cost more than all the rest of such a point.
 */
export type PartTurns = Float64Array

/** Reads the turns off a posture. @param out two numbers a part */
export function readPartTurns(posture: Float64Array, out: PartTurns): void {
  for (let part = 0; 2 * part < out.length; part++) {
    const turn = posture[3 * part + 2]
    out[2 * part] = Math.cos(turn)
    out[2 * part + 1] = Math.sin(turn)
  }
}
