/** Why nothing can be typeset on this machine, with a way out. */
export class TypesetFault extends Error {
  override readonly name = 'TypesetFault'
}
