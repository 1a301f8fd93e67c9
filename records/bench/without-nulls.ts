type Filled<Row> = { readonly [Key in keyof Row as null extends Row[Key] ? never : Key]: Row[Key] } & {
  readonly [Key in keyof Row as null extends Row[Key] ? Key : never]?: Exclude<Row[Key], null>
}

/** A row without the columns in which nothing stands. */
export function withoutNulls<Row extends object>(row: Row): Filled<Row> {
  return Object.fromEntries(Object.entries(row).filter(([, value]) => value !== null)) as Filled<Row>
}
