/** Choices of the reader that outlive a visit. A browser that keeps nothing forgets them when the page is left, and nothing else happens. */

/** The choice that was kept, when it is one of those that there are. */
export function keptChoice<Choice extends string>(key: string, choices: readonly Choice[]): Choice | undefined {
  try {
    const kept = localStorage.getItem(key)
    return choices.find((choice) => choice === kept)
  } catch (reason) {
    if (!(reason instanceof DOMException)) throw reason
    return undefined
  }
}

/** Keeps a choice for the next visit. */
export function keepChoice(key: string, choice: string): void {
  try {
    localStorage.setItem(key, choice)
  } catch (reason) {
    if (!(reason instanceof DOMException)) throw reason
  }
}
