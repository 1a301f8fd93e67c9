import { useRef } from 'react'

/** A button with words that asks for a file. */
export function FileButton(about: {
  readonly words: string
  /** What the file is, for those who cannot see the button. */
  readonly label: string
  readonly accept: string
  readonly take: (file: File) => void
}) {
  const { words, label, accept, take } = about
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" className="plain" onClick={() => input.current?.click()}>
        {words}
      </button>
      <input
        ref={input}
        type="file"
        accept={accept}
        className="visually-hidden"
        aria-label={label}
        tabIndex={-1}
        onChange={({ target }) => {
          const [chosen] = target.files ?? []
          if (chosen !== undefined) take(chosen)
          target.value = ''
        }}
      />
    </>
  )
}
