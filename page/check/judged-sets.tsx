import { useEffect, useRef } from 'react'
import { ProblemList } from '../parts/refusal.tsx'
import { LotPairs } from './lot-pairs.tsx'
import { LotSection } from './lot-section.tsx'
import { MeasuredSets } from './measured-sets.tsx'
import { type OpenedReadings, useReadings } from './readings.ts'

/** What was opened, from a file or from the bench: every set, the lot, and how its pieces pair. @param text of the design as it stands */
export function JudgedSets({ text }: { readonly text: string }) {
  const opened = useReadings()
  return opened === undefined ? null : <Opened opened={opened} text={text} />
}

function Opened({ opened, text }: { readonly opened: OpenedReadings; readonly text: string }) {
  const heading = useRef<HTMLHeadingElement>(null)
  const asked = opened.bench && opened.file
  // Who asked at the bench is led to the answer.
  useEffect(() => {
    if (asked !== undefined) heading.current?.focus()
  }, [asked])
  if (!('sets' in opened)) return <ProblemList file={opened.file} problems={opened.problems} />
  return (
    <>
      <section aria-labelledby="judged">
        <h2 id="judged" ref={heading} tabIndex={-1}>
          As measured: {opened.file}
        </h2>
        {groundOf(opened, text).map((line) => (
          <p key={line} className="aside">
            {line}
          </p>
        ))}
      </section>
      <MeasuredSets sets={opened.sets} text={opened.text} bench={opened.bench} />
      <LotSection sets={opened.sets} />
      <LotPairs sets={opened.sets} text={opened.text} />
    </>
  )
}

/** What is to be known of what the sets were judged against. */
function groundOf(opened: Extract<OpenedReadings, { readonly sets: object }>, text: string): readonly string[] {
  const { bench, passedOver, takenAs } = opened
  return [
    ...(bench === undefined ? [] : [`Judged by revision ${bench.revision}, to which lot ${bench.lot} was made.`]),
    ...(bench === undefined && opened.text !== text
      ? ['The design has changed since these sets were judged: open the file again.']
      : []),
    ...takenAs,
    ...(passedOver.length === 0 ? [] : [`Passed over: the columns ${passedOver.join(', ')}.`]),
  ]
}
