import type { Addition } from './addition.ts'
import { answered, askChoice, askName, Calculation } from './asks.ts'
import { freeName, type Ground, putInto } from './ground.ts'

/** Grease on one pin, stop or spring; more of them are added to its lists. None while there is nothing to grease. */
export function newGrease(ground: Ground): Addition | undefined {
  const { pins, stops, springs } = ground.design
  const named = (word: string, section: string, things: readonly { readonly id: string }[]) =>
    things.map(({ id }) => [`${word} ${id}`, { section, id }] as const)
  const places = new Map([
    ...named('spring', 'springs', springs),
    ...named('pin', 'pins', pins),
    ...named('stop', 'stops', stops),
  ])
  if (places.size === 0) return undefined
  const words = { kind: 'text', needed: 'in the workshop’s words' } as const
  const asks = [
    askName(freeName(ground, ['grease'], 'newGrease')),
    { ...words, id: 'with', label: 'grease', typed: 'the grease is still to be named' },
    { ...words, id: 'amount', label: 'how much', typed: 'a film' },
    askChoice('on', [...places.keys()]),
  ]
  const propose: Addition['propose'] = (inputs) => {
    const typed = answered(asks, inputs)
    const calculation = new Calculation(ground)
    const place = calculation.named('on', places, typed.on)
    if (place === undefined) return { problems: calculation.problems }
    const { section, id } = place
    const amount = typed.amount.trim() === '' ? {} : { amount: typed.amount }
    return { value: [putInto(ground, ['grease'], [typed.name, { with: typed.with, ...amount, [section]: [id] }])] }
  }
  return { kind: 'grease point', title: 'A grease point', asks, propose }
}
