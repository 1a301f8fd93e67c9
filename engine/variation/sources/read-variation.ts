import type { Design } from '../../design/design.ts'
import { coatedFeatures } from '../../design/fits/coated-features.ts'
import type { Checked } from '../../design/problem.ts'
import { listedProblems, type Recipe, readRecipe } from '../../design/read-design.ts'
import { pricedSizes } from '../spread/priced-sizes.ts'
import type { MadeDiameter, TolerancedDiameter } from './diameter.ts'
import { filmSources } from './film-sources.ts'
import { frictionSources } from './friction-sources.ts'
import { generalSources } from './general-sources.ts'
import { positionSources, profileSources } from './place-sources.ts'
import { sizeSources } from './size-sources.ts'
import { sizesBeforeCoating } from './sizes-before-coating.ts'
import type { Variation } from './source.ts'
import { springSources, wearerSources } from './spring-sources.ts'
import { putMade, tolerancedDiameters } from './toleranced-diameters.ts'
import type { SetSizes, Varying } from './varying.ts'

/**
 * Reads a design document with all that varies in it.
 *
 * @param text of a document, as for `readDesign`; with a problem it gives its problems
 */
export function readVariation(text: string, name = 'design'): Checked<Variation> {
  const { value: recipe, problems } = readRecipe(text, name)
  if (!recipe) return { problems }
  const { design, document } = recipe
  const coated = coatedFeatures({ ...design, document })
  const general = generalSources(design, document)
  const varying = [
    ...sizeSources(design, coated),
    ...general.varying,
    ...positionSources(design, document),
    ...profileSources(design),
    ...filmSources(design, coated),
    ...springSources(design),
    ...frictionSources(design),
    ...wearerSources(design),
  ]
  const diameters = tolerancedDiameters(design, document, coated)
  const variation: Variation = {
    design,
    sources: varying.flatMap(({ sources }) => sources),
    untolerated: general.untolerated,
    beforeCoating: sizesBeforeCoating(coated, design),
    diameters,
    setOf: (values, made = new Map()) => setOf({ recipe, varying, diameters }, values, made),
  }
  const priced = pricedSizes(variation)
  return priced.problems ? { problems: listedProblems(priced.problems, text) } : { value: variation }
}

interface Making {
  readonly recipe: Recipe
  readonly varying: readonly Varying[]
  readonly diameters: readonly TolerancedDiameter[]
}

function setOf(
  { recipe, varying, diameters }: Making,
  values: ArrayLike<number>,
  measured: ReadonlyMap<string, MadeDiameter>,
): Checked<Design> {
  const sizes: SetSizes = { shifts: new Map(), values: new Map(), zones: new Map(), springs: new Map() }
  let next = 0
  for (const { sources, put } of varying) {
    const own = sources.map((_, index) => values[next + index])
    next += sources.length
    put(own, sizes)
  }
  putMade(diameters, measured, sizes)
  const made = recipe.made(sizes)
  if (!made.value || sizes.springs.size === 0) return made
  const springs = made.value.springs.map((spring, index) => sizes.springs.get(index)?.(spring) ?? spring)
  return { value: { ...made.value, springs } }
}
