/** A drawing as a file that needs no other, with the caution under it: a print of it may be all that somebody sees. */
import { wrappedWords } from '../drawings/corner-marks.ts'
import { caution } from '../sentences/caution.ts'
import { fileText } from './file-text.ts'
import { lettering, px, type Shape } from './svg.ts'

const LABEL_PX = 12.5
const LINE_PX = 17
const MARGIN_PX = 14

/** @param svg a drawing whose `width` and `height` are stated in px */
export function cautionedFile(svg: Shape): string {
  const [width, height] = [Number(svg.attributes.width), Number(svg.attributes.height)]
  const lines = wrappedWords(caution, width - 2 * MARGIN_PX, LABEL_PX)
  const whole = height + lines.length * LINE_PX + MARGIN_PX
  const words = lines.map((text, index) =>
    lettering(text, { x: MARGIN_PX, y: height + (index + 1) * LINE_PX }, { class: 'caption', 'font-size': LABEL_PX }),
  )
  const attributes = { ...svg.attributes, height: px(whole), viewBox: `0 0 ${px(width)} ${px(whole)}` }
  return fileText({ ...svg, attributes, children: [...svg.children, ...words] })
}
