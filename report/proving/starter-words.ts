import type { StarterSet } from '../../engine/index.ts'

const WORDS: Readonly<Record<string, string>> = {
  requirements: 'requirements',
  demands: 'demands',
  benchTests: 'bench tests',
  risks: 'risks',
}

/** What a starter set adds: `3 requirements, 12 demands`. */
export function starterWords({ counts }: StarterSet): string {
  const named = Object.entries(counts).filter(([, count]) => count > 0)
  return named.map(([section, count]) => `${count} ${WORDS[section] ?? section}`).join(', ')
}
