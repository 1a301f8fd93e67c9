import type { QuantityKind } from '../numbers/quantity.ts'
import type { Design, Drive, DriveTravel, PadForceDirection, Port } from './design.ts'
import type { Document } from './document.ts'
import { reportSamePart, reportUnjoined, type Workbench } from './read-joints.ts'

type TypedDrive = NonNullable<Document['drive']>
type TypedPort = NonNullable<Document['release']>['port']

/** What the wearer moves; undefined when the structure was at fault, which has been reported. */
export function readDrive(bench: Workbench): Drive | undefined {
  const typed = bench.reading.document.drive
  if (!typed) return undefined
  if (typed.kind === 'turn') return readTurn(typed, bench)
  const travel = readTravel(typed, bench)
  const towards = bench.find.point('drive.towards', typed.towards)
  const needed = 'a pull between two parts'
  if (typed.kind === 'pull') {
    const on = bench.find.point('drive.on', typed.on)
    reportSamePart('drive', { parts: [on.part, towards.part], needed }, bench)
    return { kind: 'pull', on, towards, travel }
  }
  const roller = bench.find.point('drive.roller', typed.roller)
  reportSamePart('drive', { parts: [roller.part, towards.part], needed }, bench)
  return {
    kind: 'wrap',
    roller,
    pitchRadius_mm: bench.reading.size('drive.pitchRadius', typed.pitchRadius),
    turns: typed.turns,
    towards,
    travel,
  }
}

function readTurn(typed: TypedDrive & { readonly kind: 'turn' }, bench: Workbench): Drive {
  const part = bench.find.part('drive.part', typed.part)
  const against = bench.find.part('drive.against', typed.against)
  const pin = bench.find.pin('drive.pin', typed.pin)
  reportSamePart('drive', { parts: [part, against], needed: 'a turn of one part against another' }, bench)
  reportUnjoined('drive.pin', { pin, parts: [part, against] }, bench)
  return { kind: 'turn', part, against, pin, travel: readTravel(typed, bench) }
}

function readTravel(typed: TypedDrive, { reading }: Workbench): DriveTravel {
  const [position, effort]: readonly [QuantityKind, QuantityKind] =
    typed.kind === 'turn' ? ['angle', 'couple'] : ['length', 'force']
  const open = reading.quantity('drive.open', typed.open, position)
  const closed = reading.quantity('drive.closed', typed.closed, position)
  if (closed <= open) {
    const found = `open ${typed.open}, closed ${typed.closed}`
    reading.report({
      code: 'wrong order',
      place: 'drive.closed',
      found,
      needed: 'closed above open: the drive grows as the finger closes',
    })
  }
  if (typed.effortMost === undefined) return { open, closed }
  return { open, closed, effortMost: reading.above0('drive.effortMost', typed.effortMost, effort) }
}

/** Whether what is asked for at a port is a force or a couple; undefined while the drive is not known. */
export function amountKind(port: TypedPort, bench: Workbench): 'force' | 'couple' | undefined {
  if (port.kind !== 'drive') return port.kind
  const drive = bench.reading.document.drive
  return drive && (drive.kind === 'turn' ? 'couple' : 'force')
}

/** A force or couple whose amount is asked for. `place` is where the port stands in the document. */
export function readPort(place: string, typed: TypedPort, bench: Workbench): Port {
  if (typed.kind === 'drive') return { kind: 'drive' }
  if (typed.kind === 'force') return { kind: 'force', ...readDirection(place, typed, bench) }
  const part = bench.find.part(`${place}.part`, typed.part)
  const against = bench.find.part(`${place}.against`, typed.against)
  reportSamePart(place, { parts: [part, against], needed: 'a couple between two parts' }, bench)
  return { kind: 'couple', part, against }
}

interface TypedDirection {
  readonly at: string
  readonly direction: string
  readonly frame?: string | undefined
}

/** Pad and direction of a force; the pad stands on a part that moves, or the force does nothing. */
export function readDirection(place: string, typed: TypedDirection, bench: Workbench): PadForceDirection {
  const { part, pad } = readMovingPad(`${place}.at`, typed.at, bench)
  return {
    part,
    pad,
    direction_rad: bench.reading.quantity(`${place}.direction`, typed.direction, 'angle'),
    frame: typed.frame === undefined ? 0 : bench.find.part(`${place}.frame`, typed.frame),
  }
}

/** A pad to push on, as part and pad index; reported when it stands on the mount, where a push moves nothing. */
export function readMovingPad(
  place: string,
  typed: string,
  { find, parts, reading }: Workbench,
): { readonly part: number; readonly pad: number } {
  const found = find.pad(place, typed)
  if (parts[found.part]?.role === 'mount') {
    reading.report({
      code: 'wrong value',
      place,
      found: `a force on the mount, at ${typed}`,
      needed: 'a pad of a part that moves',
    })
  }
  return found
}

/** Where a finger past dead centre is forced open; undefined when the document names no such place. */
export function readRelease(bench: Workbench): Design['release'] {
  const typed = bench.reading.document.release
  if (!typed) return undefined
  const port = readPort('release.port', typed.port, bench)
  const kind = amountKind(typed.port, bench)
  if (typed.most === undefined || kind === undefined) return { port }
  return { port, most: bench.reading.above0('release.most', typed.most, kind) }
}
