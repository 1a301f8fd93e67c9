/** Light or dark paper: as the system says until the reader chooses, and then as chosen, kept for the next visit. */

/** The two papers. */
export type Theme = 'light' | 'dark'

const KEY = 'fingerwright.paper'

/** The paper that is shown now. */
export function currentTheme(): Theme {
  return chosenTheme() ?? (matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light')
}

/** Puts the chosen paper on the page; without a choice the style sheet follows the system. */
export function applyTheme(): void {
  const chosen = chosenTheme()
  if (chosen !== undefined) document.documentElement.dataset.paper = chosen
}

/** Chooses a paper. A browser that keeps nothing shows it all the same, until the page is left. */
export function chooseTheme(theme: Theme): void {
  document.documentElement.dataset.paper = theme
  try {
    localStorage.setItem(KEY, theme)
  } catch (reason) {
    if (!(reason instanceof DOMException)) throw reason
  }
}

function chosenTheme(): Theme | undefined {
  try {
    const kept = localStorage.getItem(KEY)
    return kept === 'light' || kept === 'dark' ? kept : undefined
  } catch (reason) {
    if (!(reason instanceof DOMException)) throw reason
    return undefined
  }
}
