import { type HouseRule, isCode, isTest, linesThatMatch } from './house-rule.ts'

// The words are put together from pieces, so that this file does not break its own rules.
const pattern = (...words: readonly string[]) => new RegExp(words.join('|'))
const UNFINISHED = pattern(
  '\\bTO' + 'DO\\b',
  '\\bFIX' + 'ME\\b',
  '\\bX' + 'XX\\b',
  '\\bHA' + 'CK\\b',
  '[Nn]ot imple' + 'mented',
  '[Ll]orem ip' + 'sum',
)
const MACHINE = pattern(
  '(?<![.\\w])/(ho' + 'me|Us' + 'ers)/[A-Za-z]',
  '(?<![.\\w])/(ro' + 'ot|wo' + 'rk|var/f' + 'olders)/',
  '[A-Z]:\\\\Us' + 'ers',
)
const REGISTRY = pattern('registry\\.np' + 'mjs', 'registry\\.ya' + 'rnpkg', 'npm\\.pk' + 'g\\.github', '"reso' + 'lved":')
const SILENCED = pattern(
  'biome-ig' + 'nore',
  'eslint-dis' + 'able',
  '@ts-ig' + 'nore',
  '@ts-no' + 'check',
  '@ts-expect-er' + 'ror',
)
const BUILT_CODE = pattern('new Fun' + 'ction\\b', '\\bev' + 'al\\(')
const FALSE_TEST = pattern(
  '\\.(sk' + 'ip|on' + 'ly|to' + 'do|skip' + 'If|run' + 'If|fa' + 'ils)\\b(\\(|\\.)',
  '\\bvi\\.(mo' + 'ck|do' + 'Mock|f' + 'n|spy' + 'On|st' + 'ub\\w*|use' + 'FakeTimers)',
)
const CLOCK_OR_DICE = pattern(
  'Math\\.ran' + 'dom',
  'Date\\.n' + 'ow',
  'new Da' + 'te\\(\\)',
  'performance\\.n' + 'ow',
  'process\\.hr' + 'time',
)
const TRUST_WORDS = pattern('\\b(is|are|be) (completely |perfectly )?sa' + 'fe\\b', '\\bcertif' + 'ied safe\\b')

const isProse = (path: string) => /\.(tsx?|mjs|json|md|html|css)$/.test(path)

function forbids(title: string, appliesTo: (path: string) => boolean, words: RegExp, broken: string, kept: string): HouseRule {
  const path = appliesTo('engine/example.test.ts') ? 'engine/example.test.ts' : 'engine/example.ts'
  return {
    title,
    appliesTo,
    faults: (file) => linesThatMatch(file, words),
    broken: { path, text: `const first = 1\n${broken}\n` },
    kept: { path, text: kept },
  }
}

/** Words and calls that have no place in the project. */
export const forbiddenText: readonly HouseRule[] = [
  forbids('nothing is marked as unfinished', isProse, UNFINISHED, '// FIX' + 'ME later', '// what is left to do is done'),
  forbids(
    'no file names a place on somebody’s machine',
    () => true,
    MACHINE,
    'const at = "/ho' + 'me/ann/x"',
    'const at = "/api/designs"',
  ),
  forbids('no file names a package registry', () => true, REGISTRY, 'registry.np' + 'mjs.org', 'the registry of parts'),
  forbids('no check is silenced', isProse, SILENCED, '// biome-ig' + 'nore lint', '// ignored by the reader'),
  forbids('no code is built from text', isCode, BUILT_CODE, 'ev' + 'al("1")', 'evaluate(design)'),
  forbids('no test is left out, marked or mocked', isTest, FALSE_TEST, 'it.on' + 'ly("x", run)', 'words.only'),
  forbids('no test reads a clock or throws dice without a seed', isTest, CLOCK_OR_DICE, 'Math.ran' + 'dom()', 'Math.round(1)'),
  forbids(
    'the engine and the report read no clock and throw no dice',
    isPure,
    CLOCK_OR_DICE,
    'Date.n' + 'ow()',
    'the date of now',
  ),
  forbids('nothing is called safe', isProse, TRUST_WORDS, 'the finger is sa' + 'fe', 'a safeguard'),
]

function isPure(path: string): boolean {
  return isCode(path) && /^(engine|report)\//.test(path)
}
