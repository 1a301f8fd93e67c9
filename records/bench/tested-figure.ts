import { figureNames, readDesign } from '../../engine/index.ts'
import { rowsOf, tables } from '../query.ts'
import { revisionNumbered } from '../revisions.ts'
import { Misfit, type Owner } from './look-up.ts'

/** @throws Misfit when what was measured is no force among the figures of the revision that the set was made to */
export function refuseUnknownFigure(
  owner: Owner,
  { serial, figure }: { readonly serial: string; readonly figure: string },
): void {
  const { database, design } = owner
  const query = tables
    .selectFrom('lots')
    .innerJoin('articles', 'articles.lot', 'lots.id')
    .select('lots.revision')
    .where('lots.design', '=', design)
    .where('articles.serial', '=', serial)
  const revisions = rowsOf(database, query).map(({ revision }) => revisionNumbered(database, { design, number: revision }) ?? '')
  const names = revisions.flatMap((text) => {
    const { value } = readDesign(text)
    return value === undefined ? [] : figureNames(value)
  })
  if (names.some(({ id, unit }) => id === figure && unit === 'N')) return
  throw new Misfit({
    code: 'not there',
    found: `figure ${figure}, which the set’s revision does not have as a force`,
    needed: 'a figure in N, such as loadCase.carry.sustainingLoad, or none',
  })
}
