/**
 * A formula as one line of plain text, for a terminal: λ_rest = min λ, (q (1 − q)/n)/(s_q²/16). The page sets the same formulas as
 * mathematics; here fractions become slashes, and what cannot be raised or lowered a letter at a time is written out.
 *
 * It reads what the formulas of this program are made of: groups, fractions, roots, words, raised and lowered, marks over a letter, names.
 */

/** @param tex as workings hold it; a command that is not among those stays as it is written */
export function plainFormula(tex: string): string {
  const tokens = tex.match(/\\[a-zA-Z]+|\\[^a-zA-Z]|[^\\]/g) ?? []
  return new Reading(tokens)
    .all()
    .split(GAP)
    .map((piece) => piece.replace(/ +/g, ' ').trim())
    .join('    ')
}

/** Stands for the wide space between two formulas until single spaces are tidied. */
const GAP = '\u0000'

class Reading {
  readonly #tokens: readonly string[]
  #at = 0

  constructor(tokens: readonly string[]) {
    this.#tokens = tokens
  }

  /** Up to the end, or to the brace that ends a group. */
  all(): string {
    let out = ''
    for (let token = this.#tokens[this.#at]; token !== undefined && token !== '}'; token = this.#tokens[this.#at])
      out += this.#one()
    this.#at += 1
    return out
  }

  /** One thing: a letter, a group, or a command with what belongs to it. */
  #one(): string {
    const token = this.#tokens[this.#at++]
    if (token === '{') return this.all()
    if (token === '^' || token === '_') return moved(token, this.#part())
    if (token === '-') return '−'
    return token.startsWith('\\') ? this.#command(token.slice(1)) : token
  }

  /** What belongs to a command: the next thing that is no space. */
  #part(): string {
    while (this.#tokens[this.#at] === ' ') this.#at += 1
    return this.#one()
  }

  /** The next thing that shows. */
  #next(): string | undefined {
    return this.#tokens.slice(this.#at).find((token) => !unseen.has(token))
  }

  #command(name: string): string {
    if (name === 'frac' || name === 'tfrac') return this.#fraction()
    if (name === 'binom') return `(${this.#part()} over ${this.#part()})`
    if (name === 'sqrt') return `√${bracketed(this.#part())}`
    if (words.has(name)) return this.#part()
    const mark = marks.get(name)
    if (mark !== undefined) return `${this.#part()}${mark}`
    if (named.has(name)) return this.#named(name)
    return unseen.has(`\\${name}`) ? ' '.repeat(spaces.has(name) ? 1 : 0) : (signs.get(name) ?? `\\${name}`)
  }

  /** A function with what it is taken of, apart or in brackets. */
  #named(name: string): string {
    const next = this.#next() ?? ''
    if (next === '\\frac') return `${name}(${this.#part()})`
    return ['_', '^', '('].includes(next) ? name : `${name} `
  }

  /** In brackets where a factor follows, which would seem to stand below the line. */
  #fraction(): string {
    const fraction = `${bracketed(this.#part())}/${bracketed(this.#part())}`
    const next = this.#next()
    return next === undefined || between.has(next) ? fraction : `(${fraction})`
  }
}

/** Brackets round what a slash or a root would tear apart: all but a number, or a letter with what is raised and lowered at it. */
function bracketed(text: string): string {
  const inner = text.trim()
  const isSingle = /^(\d+(\.\d+)?|√?\p{L}\p{M}?([₀-₉⁰¹²³⁴-⁹ⁿ]|[_^][\p{L}\p{N}]+)*|\([^()]*\)|\|[^|]*\||√\d+)$/u.test(inner)
  return isSingle ? inner : `(${inner})`
}

/** Raised or lowered letter by letter where each of them exists so, else written out behind its sign. */
function moved(sign: '^' | '_', text: string): string {
  const places = sign === '^' ? raised : lowered
  const letters = [...text.trim()].map((letter) => places.get(letter))
  if (letters.every((letter) => letter !== undefined)) return letters.join('')
  return /^[\p{L}\p{N},.]+$/u.test(text.trim()) ? `${sign}${text.trim()}` : `${sign}(${text.trim()})`
}

const words: ReadonlySet<string> = new Set(['text', 'operatorname', 'mathrm'])

const marks: ReadonlyMap<string, string> = new Map([
  ['bar', '\u0304'],
  ['hat', '\u0302'],
  ['dot', '\u0307'],
])

const raised = new Map(Array.from('0123456789−+n*', (letter, place) => [letter, [...'⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺ⁿ*'][place]]))
const lowered = new Map(Array.from('0123456789', (letter, place) => [letter, [...'₀₁₂₃₄₅₆₇₈₉'][place]]))

const named: ReadonlySet<string> = new Set(['min', 'max', 'sin', 'cos', 'tan', 'arcsin', 'arccos', 'arctan', 'ln', 'log', 'exp'])
const spaces: ReadonlySet<string> = new Set([' ', ',', ';', ':'])
/** What takes no room of its own. */
const unseen: ReadonlySet<string> = new Set([' ', ...[...spaces, '!', 'left', 'right', 'textstyle'].map((name) => `\\${name}`)])

/** Commands and signs by turns. */
const greek =
  'alpha α beta β gamma γ delta δ epsilon ε varepsilon ε eta η theta θ kappa κ lambda λ mu μ nu ν pi π rho ρ sigma σ tau τ phi φ varphi φ chi χ psi ψ omega ω Delta Δ Phi Φ Sigma Σ Omega Ω'
const joining = 'le ≤ ge ≥ ne ≠ approx ≈ pm ± cdot · times × to →'
const others = 'infty ∞ sum Σ int ∫ prod Π partial ∂ angle ∠ lceil ⌈ rceil ⌉ lfloor ⌊ rfloor ⌋'

function pairs(text: string): readonly (readonly [string, string])[] {
  const parts = text.split(' ')
  return parts.flatMap((part, place) => (place % 2 === 0 ? [[part, parts[place + 1]] as const] : []))
}

const signs: ReadonlyMap<string, string> = new Map([
  ...[greek, joining, others].flatMap(pairs),
  ...['%', '{', '}', '_', '|', '#', '&'].map((sign) => [sign, sign] as const),
  ...['quad', 'qquad'].map((name) => [name, GAP] as const),
])

/** What may follow a fraction without seeming to belong to it. */
const between: ReadonlySet<string> = new Set([
  ...'+-=/)]}|,:;<>',
  ...[...pairs(joining).map(([name]) => name), 'quad', 'qquad', 'text', 'rceil', 'rfloor'].map((name) => `\\${name}`),
])
