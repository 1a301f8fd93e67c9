import { defineConfig } from 'vitest/config'

const everywhere = ['node_modules/**', 'build/**']
const property = '**/*.property.test.ts'
const browser = '**/*.browser.test.ts'

// Each project inherits `test` below; a test file belongs to exactly one project.
export default defineConfig({
  test: {
    expect: { requireAssertions: true },
    allowOnly: false,
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['{engine,report,server,command-line,scripts,page,bench}/**/*.test.ts'],
          exclude: [...everywhere, property, browser],
        },
      },
      { extends: true, test: { name: 'property', include: [property], exclude: everywhere, testTimeout: 60_000 } },
      { extends: true, test: { name: 'cases', include: ['cases/**/*.test.ts'], exclude: everywhere, testTimeout: 30_000 } },
      {
        extends: true,
        test: { name: 'house', include: ['checks/**/*.test.ts'], exclude: [...everywhere, property], testTimeout: 60_000 },
      },
      {
        extends: true,
        test: { name: 'browser', include: [browser], exclude: everywhere, testTimeout: 60_000, hookTimeout: 60_000 },
      },
    ],
  },
})
