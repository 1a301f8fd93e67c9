import { defineConfig } from 'vitest/config'

const everywhere = ['node_modules/**', 'build/**']
const property = '**/*.property.test.ts'
const browser = '**/*.browser.test.ts'

// The times below end a test that hangs. They are long, because a busy machine is no fault of the tests.
const patience_ms = 120_000

// Files share a process and what it has loaded: loading the engine again for each took as long as its tests. No test leaves a state behind.
const shared = { isolate: false }

// Each project inherits `test` below; a test file belongs to exactly one project.
export default defineConfig({
  test: {
    expect: { requireAssertions: true },
    allowOnly: false,
    // All cores: by itself the runner leaves one idle, which is half of a machine of two.
    maxWorkers: '100%',
    testTimeout: patience_ms,
    hookTimeout: patience_ms,
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          ...shared,
          include: ['{engine,report,records,typesetting,server,command-line,scripts,page,bench}/**/*.test.ts'],
          exclude: [...everywhere, property, browser],
        },
      },
      {
        extends: true,
        test: { name: 'property', include: [property], exclude: everywhere, testTimeout: 5 * patience_ms, ...shared },
      },
      { extends: true, test: { name: 'cases', include: ['cases/**/*.test.ts'], exclude: everywhere, ...shared } },
      {
        extends: true,
        test: { name: 'house', include: ['checks/**/*.test.ts'], exclude: [...everywhere, property], ...shared },
      },
      {
        extends: true,
        // One browser at a time: two are no faster on two cores, and its tests look at frames and focus.
        test: {
          name: 'browser',
          include: [browser],
          exclude: everywhere,
          fileParallelism: false,
          globalSetup: 'page/tests/built-page.ts',
        },
      },
    ],
  },
})
