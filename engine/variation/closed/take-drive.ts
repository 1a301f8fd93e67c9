/** Where the leads of flat fingers stand as drawn, and between which turns their drive has them. */
import type { Column } from './columns.ts'
import { type FlatDrive, ofDrive } from './flat-drive.ts'
import type { FlatRoom } from './flat-room.ts'

/** Works out how the leads stand as drawn, and between which turns the drive has them, once the numbers of the sets are written. */
export function takeDrive({ finger, numbers, drawnTurn, firstTurn, lastTurn }: FlatRoom): void {
  const { kind, opens, at, onMount } = finger.lead
  const [stated, open, closed] = [numbers[at + ofDrive.drawnTurn], numbers[at + ofDrive.open], numbers[at + ofDrive.closed]]
  if (kind === 'turn') {
    drawnTurn.set(stated)
    for (let set = 0; set < lastTurn.length; set++) {
      firstTurn[set] = -opens * open[set]
      lastTurn[set] = -opens * closed[set]
    }
    return
  }
  const radius = numbers[at + ofDrive.radius]
  const guide = { x: numbers[at + ofDrive.guide], y: numbers[at + ofDrive.guide + 1] }
  const drawn = { x: numbers[at + ofDrive.roller], y: numbers[at + ofDrive.roller + 1] }
  const axle = { x: numbers[onMount], y: numbers[onMount + 1] }
  for (let set = 0; set < lastTurn.length; set++) {
    const between = (centre: Roller): Line =>
      lineTo({ x: guide.x[set] - centre.x[set], y: guide.y[set] - centre.y[set], radius: radius[set], opens })
    const [before, now] = [between(drawn), between(axle)]
    const bearing_rad = now.bearing_rad - before.bearing_rad
    const whole = 2 * Math.PI * Math.round(bearing_rad / (2 * Math.PI))
    drawnTurn[set] = stated[set] + bearing_rad - whole - (opens * (now.free_mm - before.free_mm)) / radius[set]
    firstTurn[set] = drawnTurn[set] - (opens * open[set]) / radius[set]
    lastTurn[set] = drawnTurn[set] - (opens * closed[set]) / radius[set]
  }
}

interface Roller {
  readonly x: Column
  readonly y: Column
}

/** A guide as the roller's centre sees it, mm. */
interface Guided extends Pick<FlatDrive, 'opens'> {
  readonly x: number
  readonly y: number
  readonly radius: number
}

interface Line {
  readonly free_mm: number
  /** Of the tangent point seen from the roller's centre. */
  readonly bearing_rad: number
}

/** As the cable's line is found on the long way (condition.ts). */
function lineTo({ x, y, radius, opens }: Guided): Line {
  const distance = Math.hypot(x, y)
  return {
    free_mm: Math.sqrt(distance * distance - radius * radius),
    bearing_rad: Math.atan2(y, x) + opens * Math.acos(radius / distance),
  }
}
