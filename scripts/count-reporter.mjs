import { writeFileSync } from 'node:fs'

/**
 * A vitest reporter that writes how many tests passed in each project to the file named by FINGERWRIGHT_COUNTS,
 * so that `npm test` can add up its stages.
 */
export default class CountReporter {
  /**
   * @param {readonly import('vitest/node').TestModule[]} modules
   * @param {readonly unknown[]} unhandled errors outside of any test
   */
  onTestRunEnd(modules, unhandled) {
    const file = process.env.FINGERWRIGHT_COUNTS
    if (file === undefined) return
    /** @type {Record<string, { passed: number, failed: number, left: number }>} */
    const projects = {}
    for (const module of modules) {
      const name = module.project.name
      const count = projects[name] ?? { passed: 0, failed: 0, left: 0 }
      projects[name] = count
      for (const test of module.children.allTests()) {
        const state = test.result().state
        if (state === 'passed') count.passed++
        else if (state === 'failed') count.failed++
        else count.left++
      }
      if (module.state() === 'failed' && module.errors().length > 0) count.failed++
    }
    writeFileSync(file, JSON.stringify({ projects, unhandled: unhandled.length }))
  }
}
