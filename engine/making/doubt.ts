/** Something that a shop will stumble over, told before the design is sent. It stops nothing. */
export interface MakingDoubt {
  /** In the document. */
  readonly place: string
  readonly found: string
  readonly needed: string
  readonly wayOut: string
}
