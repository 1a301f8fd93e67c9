import { type KeyboardEvent, type PointerEvent, useMemo } from 'react'
import type { Design } from '../../engine/index.ts'
import { drawTravelScale, driveMarks, readTravel, type ToldTravel, travelEnd } from '../../report/index.ts'
import { useWidth } from '../state/use-width.ts'
import { Drawn } from './drawn.tsx'
import styles from './travel-pointer.module.css'

/** One stroke of the scale: a degree or a millimetre of the drive. */
const STROKE = 1

/** The printed scale of the travel at the foot of the page, with the pointer that sets the posture of every drawing. */
export function TravelPointer(about: {
  readonly design: Design
  readonly travel: ToldTravel
  readonly arc_ratio: number
  readonly point: (arc_ratio: number) => void
}) {
  const { design, travel, arc_ratio, point } = about
  const [place, width] = useWidth<HTMLDivElement>()
  const scale = useMemo(() => (width > 0 ? drawTravelScale(travel, { width_px: width }) : undefined), [travel, width])
  const stops = useMemo(() => strokesOf(travel), [travel])
  const range = scale?.range ?? [0, 1]
  const end = travelEnd(travel)
  const x = scale === undefined ? 0 : scale.left + ((arc_ratio - range[0]) / (range[1] - range[0])) * (scale.right - scale.left)
  const set = (event: PointerEvent<HTMLDivElement>): void => {
    if (scale === undefined || event.buttons === 0) return
    const at = event.clientX - event.currentTarget.getBoundingClientRect().left
    const share = Math.min(1, Math.max(0, (at - scale.left) / (scale.right - scale.left)))
    point(Math.min(end, caught(range[0] + share * (range[1] - range[0]), travel)))
  }
  const step = (event: KeyboardEvent): void => {
    const next = nextPlace(event.key, { arc_ratio, stops, travel, range: [range[0], end] })
    if (next === undefined) return
    event.preventDefault()
    point(next)
  }
  return (
    <div className={styles.foot}>
      <p className={styles.reading} aria-hidden="true">
        {driveName(design)} <strong>{readTravel(travel, arc_ratio).split(',')[0]}</strong>
      </p>
      <div ref={place} className={styles.beam} onPointerDown={set} onPointerMove={set}>
        {scale === undefined ? null : <Drawn shape={scale.svg} />}
        <div
          role="slider"
          tabIndex={0}
          className={styles.pointer}
          style={{ left: `${scale === undefined ? 0 : (100 * x) / scale.width}%` }}
          aria-label="Posture: share of the travel"
          aria-valuemin={Math.round(range[0] * 100)}
          aria-valuemax={Math.round(end * 100)}
          aria-valuenow={Math.round(arc_ratio * 100)}
          aria-valuetext={`${driveName(design)} ${readTravel(travel, arc_ratio)}`}
          onKeyDown={step}
        >
          <svg viewBox="0 0 44 78" width="44" height="78" aria-hidden="true">
            <path d="M22 30V42" />
            <path d="M22 42l-8 16h16z" />
          </svg>
        </div>
      </div>
    </div>
  )
}

/** What the wearer moves, in a word: the pin that is turned, or the pull. */
export function driveName(design: Design): string {
  return design.drive.kind === 'turn' ? design.pins[design.drive.pin].id : 'pull'
}

function strokesOf(travel: ToldTravel): readonly number[] {
  const marks = driveMarks(travel, STROKE).map((mark) => mark.arc_ratio)
  return [...new Set([...marks, ...travel.events.map((event) => event.arc_ratio)])].sort((one, other) => one - other)
}

/** The pointer falls onto an event that is near, so that the stop can be set exactly by hand. */
function caught(arc_ratio: number, travel: ToldTravel): number {
  return travel.events.find((event) => Math.abs(event.arc_ratio - arc_ratio) < 0.006)?.arc_ratio ?? arc_ratio
}

interface Standing {
  readonly arc_ratio: number
  readonly stops: readonly number[]
  readonly travel: ToldTravel
  readonly range: readonly [number, number]
}

function nextPlace(key: string, { arc_ratio, stops, travel, range }: Standing): number | undefined {
  const inside = (places: readonly number[]): readonly number[] =>
    places.filter((place) => place >= range[0] && place <= range[1])
  const events = travel.events.map((event) => event.arc_ratio).sort((one, other) => one - other)
  const up = (places: readonly number[]): number => inside(places).find((place) => place > arc_ratio + 1e-6) ?? range[1]
  const down = (places: readonly number[]): number => inside(places).findLast((place) => place < arc_ratio - 1e-6) ?? range[0]
  if (key === 'ArrowRight' || key === 'ArrowUp') return up(stops)
  if (key === 'ArrowLeft' || key === 'ArrowDown') return down(stops)
  if (key === 'PageUp') return up(events)
  if (key === 'PageDown') return down(events)
  if (key === 'Home') return range[0]
  return key === 'End' ? range[1] : undefined
}
