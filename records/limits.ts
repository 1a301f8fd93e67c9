/** Bounds of the store, each with its reason. What a design file may hold is bounded by the engine. */
export const storeLimits = {
  /** Characters of a name that is chosen here: it has to fit into a table, an address and a file's name. */
  nameLength: 100,
  /** Characters of a name that came with a file: what file systems allow. */
  givenNameLength: 255,
  /** Characters of who said it: a name or a code, not a letter. */
  whoLength: 120,
  /** Characters of the reason; as long as a note in a design. */
  whyLength: 4000,
  /** Characters of the few words that name a step in the list of what was done. */
  saidLength: 300,
  /** Steps that are kept in one go: a page that could not save for a day has gathered fewer. */
  stepsAtOnce: 10_000,
  /**
   * Bytes of a store that is brought in from elsewhere. A revision is about 35 kB: this is room for more than two thousand, and what
   * a server can still hold in memory while it receives it.
   */
  storeBytes: 100_000_000,
  /** Characters of the figures, findings or problems of one revision: a hundred times what the examples have. */
  resultLength: 2_000_000,
  /** Characters of a reading as it was typed: a size with its unit, or two. */
  typedLength: 100,
  /** Beyond any size, load or count on a bench in mm, N, °C or cycles: whatever is larger was mistyped. */
  largestNumber: 1e9,
  /** Coupons of one certificate: a coater sends one to five. */
  couponsAtOnce: 100,
  /** Risks that one return belongs to: one, or a few. */
  risksAtOnce: 20,
  /** Letters of a photo in base64: 2 MB, which a telephone's picture is brought down to. */
  photoLetters: 2_666_664,
  /** How long a save waits for another program that writes to the same store: far longer than any save takes. */
  wait_ms: 5000,
} as const
