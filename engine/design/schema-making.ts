/** What is ordered, bought and done by hand: the part of the document that answers what a set costs. */
import { idNeeded, listOf, name, object, partId, pinId, plain, quantity, springId } from './schema-leaves.ts'

/** One entry of `orders`. */
export const order = object({
  process: name('the process').describe('What the shop does, such as milled from bar, ground, hard anodized.'),
  parts: listOf(partId, 'parts').describe(`Parts that it is done to: ${idNeeded}.`),
  pins: listOf(pinId, 'pins').describe('Pins that it is done to.'),
  springs: listOf(springId, 'springs').describe('Springs that it is done to.'),
  setUp: plain('160').optional().describe('What the shop asks once for a batch. Default: 0.'),
  each: plain('42').describe('What it asks for every piece.'),
  blank: plain('3.1').optional().describe('What the material of one piece costs, where it is charged apart. Default: 0.'),
}).describe('What is ordered from one shop in one go, priced by set-up and by piece.')

/** One entry of `bought`. */
export const boughtItem = object({
  title: name('the item'),
  quantity: plain('4').describe('In one finger.'),
  each: plain('0.2').describe('What one of them costs.'),
  mass: quantity('mass').optional().describe('Of one of them. Left out: not counted.'),
})

/** `making`. */
export const making = object({
  set: plain('3').optional().describe('Fingers in one set. Default: 1.'),
  currency: name('the currency').describe('Of every price in this document.'),
  wage: plain('38').optional().describe('What an hour of work by hand costs. Default: 0.'),
  assembly: plain('25').optional().describe('Minutes in which the first finger is bolted together. Default: 0.'),
  fitting: plain('10').optional().describe('Minutes of fitting by hand on the first finger. Default: 0.'),
  inspection: plain('20').optional().describe('Minutes in which the first finger is inspected. Default: 0.'),
  learning: plain('90 %')
    .optional()
    .describe('Share of the minutes that is left each time the number made has doubled. Default: 100 %.'),
  goodShare: plain('95 %').optional().describe('Share of the fingers that can be sold. Default: 100 %.'),
  price: plain('1450').optional().describe('What a set is sold for. Left out: nothing is said of break-even.'),
}).describe('What a set is made of beside its parts: hours, prices, losses.')
