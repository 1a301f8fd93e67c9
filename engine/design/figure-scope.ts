import type { Document } from './document.ts'
import type { FigureScope } from './figure-names.ts'

/** The things that give figures their names, as typed. @param pins in the order of the document, those that could be read */
export function figureScope(document: Document, pins: readonly { readonly id: string }[]): FigureScope {
  const named = <T extends object>(things: Readonly<Record<string, T>> | undefined) =>
    Object.entries(things ?? {}).map(([id, thing]) => ({ ...thing, id }))
  return {
    drive: document.drive ?? { kind: 'turn' },
    release: document.release,
    tip: document.tip === undefined ? undefined : { typed: document.tip },
    pins: pins.map(({ id }) => ({ id })),
    toggles: named(document.toggles),
    stops: named(document.stops).map(({ id }) => ({ id })),
    springs: named(document.springs).map(({ id, kind, wire }) => ({ id, kind, wire })),
    screws: named(document.screws).map(({ id, holdsMount }) => ({ id, holdsMount })),
    parts: named(document.parts).map(({ id, role }) => ({ id, role })),
    loadCases: named(document.loadCases).map(({ id, keeper }) => ({ id, keeper })),
  }
}
