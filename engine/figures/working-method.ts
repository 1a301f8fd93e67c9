/** One row of the workings, and what several of them say alike. */

/** How the figures with a certain head and end of their name come about. */
export interface Method {
  /** Beginning of the figure's name, e.g. `closed.toggle.`. */
  readonly head: string
  /** End of it, e.g. `.deadCentreMargin`; with `*` whatever follows. */
  readonly tail: string
  readonly method: string
  readonly formulas: readonly string[]
  readonly source: string
}

/** Equilibrium of every part, TeX; symbols in docs/theory/forces.md. */
export const equilibrium = 'C^{T} R + \\lambda\\, p + Q - \\sum_j \\kappa_j |R_j|\\, d_j = 0'
/** Radius of the friction circle, TeX. */
export const circle = '\\rho = r \\sin(\\arctan \\mu)'

/** Source of what was derived here, with its page. */
export function theory(page: string): string {
  return `derived for this project in docs/theory/${page}; friction circle: any text on theory of machines, from memory`
}
