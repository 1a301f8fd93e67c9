/** Light or dark paper: as the system says until the reader chooses, and then as chosen, kept for the next visit. */
import { keepChoice, keptChoice } from './kept-choice.ts'

/** The two papers. */
export type Theme = 'light' | 'dark'

const KEY = 'fingerwright.paper'
const THEMES: readonly Theme[] = ['light', 'dark']

/** The paper that is shown now. */
export function currentTheme(): Theme {
  return keptChoice(KEY, THEMES) ?? (matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light')
}

/** Puts the chosen paper on the page; without a choice the style sheet follows the system. */
export function applyTheme(): void {
  const chosen = keptChoice(KEY, THEMES)
  if (chosen !== undefined) document.documentElement.dataset.paper = chosen
}

/** Chooses a paper. */
export function chooseTheme(theme: Theme): void {
  document.documentElement.dataset.paper = theme
  keepChoice(KEY, theme)
}
