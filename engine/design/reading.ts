import type { Expression } from '../numbers/expression.ts'
import type { Fault, Read } from '../numbers/fault.ts'
import { limits } from '../numbers/limits.ts'
import { type Measured, measure, type Names, namesIn } from '../numbers/measure.ts'
import { nearestName } from '../numbers/nearest.ts'
import { plainNumber } from '../numbers/powers.ts'
import { asKind, type QuantityKind } from '../numbers/quantity.ts'
import { hasUnprintable, quoted } from '../numbers/quote.ts'
import type { Document } from './document.ts'
import { asTyped, type OtherSizes, type ZonePlace } from './other-sizes.ts'
import type { Problem } from './problem.ts'
import type { Structure } from './structure.ts'
import { typedText } from './typed-text.ts'

/**
 * One reading of one document: collects problems while the readers turn typed text into values.
 *
 * A quantity or reference that has a problem comes back as NaN or -1. That never leaves the reader: a document with any
 * problem gives no Design. Checks are written so that NaN passes them, lest one fault be reported twice.
 */
export class Reading {
  readonly document: Document
  readonly problems: Problem[]
  /** False for one set, which differs by too little for another order of corners. */
  readonly isAsTyped: boolean
  private readonly isBroken: (place: string) => boolean
  private readonly brokenPlaces: readonly string[]
  private readonly names = new Map<string, Measured>()
  /** Dimensions that have a problem of their own; what uses them has none. */
  private readonly faultyNames = new Set<string>()

  private readonly other: OtherSizes

  /** @param other sizes than those typed, for one set */
  constructor(structure: Structure, other: OtherSizes = asTyped) {
    this.other = other
    this.isAsTyped = other === asTyped
    this.document = structure.document
    this.problems = [...structure.problems]
    this.isBroken = structure.isBroken
    this.brokenPlaces = structure.brokenPlaces
  }

  /** From here on expressions may use this dimension; without a value it has been reported. */
  setName(name: string, value: Measured | undefined): void {
    if (value) this.names.set(name, value)
    else this.faultyNames.add(name)
  }

  /** Values of the dimensions that have been read so far and have no problem. */
  get knownNames(): Names {
    return this.names
  }

  report(problem: Problem): void {
    if (!this.isFull) this.problems.push(problem)
  }

  /** One more than are listed, so that the list can say that there are more. Then nothing further is looked into. */
  private get isFull(): boolean {
    return this.problems.length > limits.problems
  }

  /** True for a thing that had a fault of structure: it has been reported and cannot be referred to. */
  wasTakenOut(place: string): boolean {
    return this.isBroken(place)
  }

  /** True when something of a section, or all of it, was taken out: what seems to be missing may only have been misspelt. */
  hasBrokenIn(section: string): boolean {
    return this.brokenPlaces.some((place) => place === section || place.startsWith(`${section}.`))
  }

  reportFault(place: string, typed: string, fault: Fault): void {
    this.report({
      code: fault.code,
      place,
      found: `${quoted(typed)}, at column ${fault.column} ${fault.found}`,
      needed: fault.needed,
      ...(fault.wayOut && { wayOut: fault.wayOut }),
    })
  }

  /** A text as an expression. */
  expression(typed: string): Read<Expression> {
    return typedText(typed).read
  }

  /** What this set adds to the quantity at a place; 0 for a size as typed. */
  shift(place: string): number {
    return this.other.shifts.get(place) ?? 0
  }

  /** Where this set has the centre of a hole within its zone; undefined for the middle. @param place of the hole */
  zonePlace(place: string): ZonePlace | undefined {
    return this.other.zones.get(place)
  }

  /** In base units, or undefined when it has been reported. Only names already set may occur. */
  measured(place: string, typed: string | number): Measured | undefined {
    if (typeof typed === 'number') return { value: typed, powers: plainNumber }
    if (this.isFull) return undefined
    const { constant, read: expression } = typedText(typed)
    if (constant) return constant
    if (expression.fault) {
      this.reportFault(place, typed, expression.fault)
      return undefined
    }
    const isReported = (name: string) => this.faultyNames.has(name) || this.isBroken(`dimensions.${name}`)
    if (namesIn(expression.value).some(isReported)) return undefined
    const measured = measure(expression.value, this.names)
    if (measured.fault) this.reportFault(place, typed, measured.fault)
    return measured.value
  }

  /** In the inside unit of `kind`; NaN when it has been reported. */
  quantity(place: string, typed: string | number, kind: QuantityKind): number {
    const measured = this.measured(place, typed)
    if (!measured) return Number.NaN
    const read = asKind(measured, kind)
    if (read.fault) this.reportFault(place, String(typed), read.fault)
    return (this.other.values.get(place) ?? read.value ?? Number.NaN) + this.shift(place)
  }

  /** A quantity that must be at least `least`, in the inside unit of `kind`. */
  atLeast(place: string, typed: string | number, { kind, least }: { kind: QuantityKind; least: number }): number {
    const value = this.quantity(place, typed, kind)
    if (value < least) {
      const needed = least === 0 ? 'nothing below 0' : `at least ${least}${kind === 'length' ? ' mm' : ''}`
      this.report({ code: 'too small', place, found: quoted(String(typed)), needed })
    }
    return value
  }

  above0(place: string, typed: string | number, kind: QuantityKind): number {
    const value = this.quantity(place, typed, kind)
    if (value <= 0) this.report({ code: 'too small', place, found: quoted(String(typed)), needed: 'more than 0' })
    return value
  }

  /** A diameter, radius or other size of a part: a length that a shop can make. */
  size(place: string, typed: string): number {
    return this.atLeast(place, typed, { kind: 'length', least: limits.sizeLeast_mm })
  }

  /** A share such as 5 %, from 0 to just below 1. */
  share(place: string, typed: string | number): number {
    const value = this.atLeast(place, typed, { kind: 'number', least: 0 })
    if (value >= 1) this.report({ code: 'too large', place, found: quoted(String(typed)), needed: 'a share below 1 (100 %)' })
    return value
  }

  /** A title or a name: one line. Control characters could make a terminal show what is not there. */
  line(place: string, typed: string): string {
    if (hasUnprintable(typed)) {
      this.report({ code: 'wrong value', place, found: quoted(typed), needed: 'one line of text without control characters' })
    }
    return typed
  }

  /** A note, a reason or a source: it may have several lines. */
  text(place: string, typed: string): string {
    this.line(place, typed.replaceAll('\n', ' '))
    return typed
  }

  unknownName(place: string, { typed, what, known }: { typed: string; what: string; known: readonly string[] }): void {
    if (this.isFull) return
    const nearest = nearestName(typed, known)
    const shown = known.slice(0, namesShown).join(', ')
    this.report({
      code: 'unknown name',
      place,
      found: quoted(typed),
      needed:
        known.length === 0 ? `${what}, of which there are none` : `${what}: ${shown}${known.length > namesShown ? ', …' : ''}`,
      ...(nearest && { wayOut: `Did you mean ${nearest}?` }),
    })
  }
}

/** Known names listed in a message. */
const namesShown = 12
