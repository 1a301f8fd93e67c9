import { type HouseRule, isCode } from './house-rule.ts'

const NAME = /^[a-z0-9]+(-[a-z0-9]+)*(\.(test|property\.test|browser\.test|config|module))?\.(tsx?|mjs|css|html|json)$/
const EMPTY_WORDS = /(^|[/-])(utils?|common|helpers?|misc|stuff|manager)([./-])/

/** Files are named by what they hold. */
export const filesAreNamedByContent: HouseRule = {
  title: 'every code file has a kebab-case name that says what it holds',
  appliesTo: isCode,
  faults: ({ path }) => {
    const name = path.slice(path.lastIndexOf('/') + 1)
    if (EMPTY_WORDS.test(path)) return [`${path}: the name says nothing`]
    return NAME.test(name) ? [] : [`${path}: not kebab-case`]
  },
  broken: { path: 'engine/mathUtils.ts', text: '' },
  kept: { path: 'engine/dead-centre.property.test.ts', text: '' },
}
