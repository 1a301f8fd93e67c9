/** @typedef {{ name: string, passed: number, failed: number }} Stage */
/** @typedef {{ projects: Record<string, { passed: number, failed: number, left: number }>, unhandled: number }} Counts */

/**
 * Turns what one run of vitest counted into stages. A test that was left out counts as failed, and so does a project without any test:
 * silence is no proof.
 *
 * @param {{ group: readonly string[], counts: Counts, status: number }} ended the projects asked for, what was counted, the exit status
 * @returns {Stage[]}
 */
export function stagesOf({ group, counts, status }) {
  const stages = group.map((name) => {
    const { passed, failed, left } = counts.projects[name] ?? { passed: 0, failed: 0, left: 0 }
    return { name, passed, failed: failed + left + Number(passed + failed + left === 0) }
  })
  const unseen = status !== 0 && stages.every((stage) => stage.failed === 0)
  if (!unseen && counts.unhandled === 0) return stages
  return [...stages, { name: 'errors outside of any test', passed: 0, failed: Math.max(1, counts.unhandled) }]
}

/**
 * The last lines of `npm test`: each stage with its count, then how many passed.
 *
 * @param {readonly Stage[]} stages
 * @param {number} time_s
 * @returns {{ text: string, passed: boolean }}
 */
export function summaryOf(stages, time_s) {
  const sum = (/** @type {'passed' | 'failed'} */ key) => stages.reduce((total, stage) => total + stage[key], 0)
  const parts = stages.map(
    (stage) => `${stage.name} ${stage.passed}${stage.failed > 0 ? ` (${stage.failed} failed or left out)` : ''}`,
  )
  const [failed, passed] = [sum('failed'), sum('passed')]
  const last = failed > 0 ? `${failed} failed, ${passed} passed.` : `All ${passed} passed.`
  return { text: `${parts.join(' · ')} · ${time_s} s\n${last}`, passed: failed === 0 && passed > 0 }
}
