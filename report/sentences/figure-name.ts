import { inside } from './words.ts'

/** A figure's title inside a sentence: small, the load it belongs to in brackets behind it. */
export function figureName({ id, title }: { readonly id: string; readonly title: string }): string {
  const [name, ...rest] = title.split(', ')
  if (id.startsWith('loadCase.') && rest.length > 0) return `${inside(name)} (${inside(rest.join(', '))})`
  return [inside(name), ...rest].join(', ')
}
