/**
 * Which folder may import which. Imports go one way: inside the engine
 * numbers ← design ← motion ← forces ← strength ← figures ← evaluate ← variation ← making ← inspection ← proving ← index, outside of it
 * engine/index ← report/index, records/index, typesetting/index ← server/index ← command-line, and engine/index, report/index ← page.
 */
import { join } from 'node:path'
import { cruise, type ICruiseResult, type IForbiddenRuleType } from 'dependency-cruiser'

const ENGINE_LAYERS = [
  'numbers',
  'design',
  'motion',
  'forces',
  'strength',
  'figures',
  'evaluate(-asked)?',
  'variation',
  'making',
  'inspection',
  'proving',
] as const

/** Folders whose modules are bound by the layers. */
export const LAYERED = ['engine', 'report', 'records', 'typesetting', 'server', 'command-line', 'page'] as const

const TEST = '\\.test\\.tsx?$|/tests?(-support)?/'

/** A layer of the engine may not import from a layer above it. */
const engineRules: readonly IForbiddenRuleType[] = ENGINE_LAYERS.map((layer, index) => ({
  name: `${layer} imports only what stands below it`,
  severity: 'error',
  from: { path: `^engine/${layer}[./]`, pathNot: TEST },
  to: { path: ['^engine/index\\.ts$', ...ENGINE_LAYERS.slice(index + 1).map((above) => `^engine/${above}[./]`)] },
}))

const outsideRules: readonly IForbiddenRuleType[] = [
  {
    name: 'the engine imports only itself and its tables',
    severity: 'error',
    from: { path: '^engine/', pathNot: TEST },
    to: { pathNot: ['^engine/', '^tables/', '^node_modules/'] },
  },
  only('report', ['^engine/index\\.ts$']),
  only('records', ['^engine/index\\.ts$']),
  only('typesetting', ['^report/index\\.ts$']),
  only('server', [...['engine', 'report', 'records', 'typesetting'].map(doorOf), '^package\\.json$']),
  only('command-line', ['engine', 'report', 'records', 'typesetting', 'server'].map(doorOf)),
  only('page', ['^engine/index\\.ts$', '^report/index\\.ts$']),
  {
    name: 'the engine and the report use no module of Node',
    severity: 'error',
    from: { path: '^(engine|report)/', pathNot: TEST },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'only the records speak to a database',
    severity: 'error',
    from: { pathNot: '^records/' },
    to: { path: '(^|/)(better-sqlite3|kysely)(/|$)' },
  },
  { name: 'no import goes round in a circle', severity: 'error', from: {}, to: { circular: true } },
  { name: 'every import is found', severity: 'error', from: {}, to: { couldNotResolve: true } },
]

/** The only file of a folder that others may import. */
function doorOf(folder: string): string {
  return `^${folder}/index\\.ts$`
}

/** A folder outside the engine may import itself, packages, and these doors. */
function only(folder: string, doors: readonly string[]): IForbiddenRuleType {
  return {
    name: `${folder} imports only the doors below it`,
    severity: 'error',
    from: { path: `^${folder}/`, pathNot: TEST },
    to: {
      path: '^(engine|report|records|typesetting|server|command-line|page|tables|scripts|checks|cases|bench|designs|package\\.json)',
      pathNot: [`^${folder}/`, ...doors],
    },
  }
}

/** What the layers' check saw: the modules it read, and the imports that break a rule. */
export interface LayersSeen {
  readonly modules: readonly string[]
  /** As `from → to: rule`. */
  readonly violations: readonly string[]
}

/**
 * Reads every import under a root and judges it.
 *
 * @param rootFolder the project, or a copy of its shape
 */
export async function seeLayers(rootFolder: string): Promise<LayersSeen> {
  const { output } = await cruise(
    LAYERED.map((folder) => folder),
    {
      baseDir: rootFolder,
      ruleSet: { forbidden: [...engineRules, ...outsideRules] },
      validate: true,
      doNotFollow: { path: 'node_modules' },
      exclude: { path: '\\.(css|woff2?)$' },
      tsPreCompilationDeps: true,
      tsConfig: { fileName: join(import.meta.dirname, '..', 'tsconfig.json') },
      enhancedResolveOptions: {
        extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'],
        exportsFields: ['exports'],
        conditionNames: ['import', 'types', 'node', 'default'],
      },
    },
  )
  const result = output as ICruiseResult
  return {
    modules: result.modules.map((module) => module.source),
    violations: result.summary.violations.map(({ from, to, rule }) => `${from} → ${to}: ${rule.name}`),
  }
}
