/** TEST SUPPORT. What axe-core objects to on a page: accessibility by the rules of WCAG 2.2 A and AA, and good practice. */
import AxeBuilder from '@axe-core/playwright'
import type { Page } from 'playwright-core'

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** Every objection with the elements that it is about; empty when there is none. */
export async function objections(page: Page): Promise<readonly string[]> {
  return told(new AxeBuilder({ page }).withTags(RULES))
}

/** As `objections`, of contrast alone: nothing else changes with the paper. */
export async function objectionsToInk(page: Page): Promise<readonly string[]> {
  return told(new AxeBuilder({ page }).withRules(['color-contrast']))
}

async function told(asked: AxeBuilder): Promise<readonly string[]> {
  const { violations } = await asked.analyze()
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`)
}
