import type { PageFiles } from './page-files.ts'

/** Address of the page for signing in, its form's as well. */
export const signInAddress = '/sign-in'

const FILE = '/sign-in.html'
const SAID = '<!-- said -->'

/** Files that the page for signing in needs before anybody is signed in: looks, no data and no code. */
const LOOKS = /\.(css|woff2?|svg)$/

/** Whether a file of the page is handed out to everybody. */
export function isForEverybody(path: string): boolean {
  return LOOKS.test(path)
}

/**
 * The page for signing in.
 *
 * @returns a function that gives the page with a sentence of our own above the form; none when the sentence is empty
 * @throws Error when the built page has no place for it: the build is broken
 */
export function signInPage(page: PageFiles): (said: string) => string {
  const html = new TextDecoder().decode(page.get(FILE)?.bytes)
  if (html.split(SAID).length !== 2) throw new Error(`${FILE} of the built page must hold ${SAID} once`)
  return (said) => html.replace(SAID, said)
}
