/** Why nothing can be typeset on this machine, with a way out. */
export class TypesetFault extends Error {
  override readonly name = 'TypesetFault'
}

/** A template that cannot be set with the data that it was given: its place, and why. */
export class TemplateFault extends Error {
  override readonly name = 'TemplateFault'
}
