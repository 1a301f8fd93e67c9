/** Does something with the next frame; what is asked for meanwhile takes its place. */
export class NextFrame {
  #deed: (() => void) | undefined

  /** Does it with the next frame, and nothing that waited before. */
  do(deed: () => void): void {
    if (this.#deed === undefined) requestAnimationFrame(() => this.#due())
    this.#deed = deed
  }

  /** Nothing that waits is done. */
  forget(): void {
    if (this.#deed !== undefined) this.#deed = () => undefined
  }

  #due(): void {
    const deed = this.#deed
    this.#deed = undefined
    deed?.()
  }
}
