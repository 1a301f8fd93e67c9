import { designSchema } from './document.ts'

/** The few words of JSON Schema that our own schema is made of. */
interface SchemaNode {
  readonly properties?: Readonly<Record<string, SchemaNode>>
  readonly additionalProperties?: SchemaNode | boolean
  readonly prefixItems?: readonly SchemaNode[]
  readonly items?: SchemaNode
  readonly anyOf?: readonly SchemaNode[]
  readonly oneOf?: readonly SchemaNode[]
}

let schema: SchemaNode | undefined

/** Made when it is first asked for; every file that has no unknown key does without. */
function publishedSchema(): SchemaNode {
  schema ??= designSchema() as SchemaNode
  return schema
}

/** Keys that the published schema knows at a place of the document, in its order; of all alternatives that may stand there. */
export function knownKeys(path: readonly PropertyKey[]): readonly string[] {
  let nodes = alternatives([publishedSchema()])
  for (const step of path) nodes = alternatives(nodes.flatMap((node) => within(node, step)))
  return [...new Set(nodes.flatMap((node) => Object.keys(node.properties ?? {})))]
}

function alternatives(nodes: readonly SchemaNode[]): readonly SchemaNode[] {
  return nodes.flatMap((node) => {
    const choices = node.anyOf ?? node.oneOf
    return choices ? alternatives(choices) : [node]
  })
}

function within(node: SchemaNode, step: PropertyKey): readonly SchemaNode[] {
  if (typeof step === 'number') {
    const item = node.prefixItems?.[step] ?? node.items
    return item ? [item] : []
  }
  const key = String(step)
  if (node.properties && Object.hasOwn(node.properties, key)) return [node.properties[key]]
  return typeof node.additionalProperties === 'object' ? [node.additionalProperties] : []
}
