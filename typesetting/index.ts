/** The typesetter's only door: documents in, PDF out, in a process of its own that ends with them. */

export { TemplateFault, TypesetFault } from './typeset-fault.ts'
export { type Typeset, type TypesetOptions, type Typesetter, typesetterAt } from './typesetter.ts'
