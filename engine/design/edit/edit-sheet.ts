/** All that can be edited of a document, as tables: sections of rows of fields, in the order of the document's schema. */
import type { Place } from '../json-places.ts'
import type { Problem } from '../problem.ts'
import { type Desk, layOpen } from './desk.ts'
import { type Field, fieldOf } from './field.ts'
import { placeWords } from './field-words.ts'
import type { Leaf } from './leaves.ts'
import { type AdditionKind, type SectionHead, sectionHeads } from './section-heads.ts'
import { entriesOf, valueAt } from './value-at.ts'

/** One thing of the document: a pin, a hole, a corner of an outline. */
export interface Row {
  readonly id: string
  readonly place: Place
  readonly title: string
  readonly fields: readonly Field[]
  /** Problems of the thing as a whole, which stand at none of its fields. */
  readonly problems: readonly Problem[]
}

/** Things that stand together; a part has a section of its own with its holes, edges, pads and corners as rows. */
export interface Section {
  readonly id: string
  readonly title: string
  readonly rows: readonly Row[]
  /** What can be added here. */
  readonly adds: readonly AdditionKind[]
}

/** The tables, and the problems of the document that stand at none of their rows. */
export interface Sheet {
  readonly sections: readonly Section[]
  readonly problems: readonly Problem[]
}

/** The tables of a document, also of one with problems; a text that is no JSON has none, and its problems say why. */
export function editSheet(text: string): Sheet {
  const { value: desk, problems } = layOpen(text)
  if (!desk) return { sections: [], problems }
  const rows = rowsOf(desk)
  const sections = sectionHeads.flatMap((head) => (head.id === 'parts' ? partSections(desk, head, rows) : [section(head, rows)]))
  const shown = new Set([...editable(desk).map(({ place }) => place.join('.')), ...rows.keys()])
  return { sections, problems: desk.problems.filter(({ place }) => !shown.has(place)) }
}

/** Leaves that say something of the finger; the name of the schema says it of the file. */
function editable({ leaves }: Desk): readonly Leaf[] {
  return leaves.filter(({ place }) => place[0] !== '$schema')
}

type Rows = ReadonlyMap<string, Row>

function rowsOf(desk: Desk): Rows {
  const leaves = new Map<string, Leaf[]>()
  for (const leaf of editable(desk)) {
    const id = leaf.row.join('.')
    leaves.set(id, [...(leaves.get(id) ?? []), leaf])
  }
  const entries = [...leaves].map(([id, [first, ...more]]): [string, Row] => {
    const fields = [first, ...more].map((leaf) => fieldOf(desk, leaf))
    const own = fields.some(({ place }) => place.join('.') === id) ? [] : desk.problems.filter(({ place }) => place === id)
    return [id, { id, place: first.row, title: rowTitle(first.row), fields, problems: own }]
  })
  return new Map(entries)
}

/** Within its section: `hole dip` in that of a part, `carry force 1` among the load cases. */
function rowTitle(row: Place): string {
  if (row[0] === 'parts') return row.length === 2 ? 'the part itself' : placeWords(row.slice(2))
  if (row.length === 1) return placeWords(row)
  return [row[1], placeWords(row.slice(2))].filter((word) => word !== '').join(' ')
}

function section({ id, title, keys = [id], adds = [] }: SectionHead, rows: Rows): Section {
  return { id, title, rows: [...rows.values()].filter(({ place }) => keys.includes(String(place[0]))), adds }
}

function partSections({ document }: Desk, { adds = [] }: SectionHead, rows: Rows): readonly Section[] {
  return entriesOf(valueAt(document, ['parts'])).map(([part, value]) => {
    const name = valueAt(value, ['name'])
    const own = [...rows.values()].filter(({ place }) => place[0] === 'parts' && place[1] === part)
    return { id: `parts.${part}`, title: typeof name === 'string' ? name : part, rows: own, adds }
  })
}
