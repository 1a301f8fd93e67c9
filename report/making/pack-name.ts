/** Name of the zip that goes to the shop. @param revision as it stands in the title blocks; none for a design that is kept in no store */
export function packName(design: string, revision?: string): string {
  return `${design}${revision === undefined ? '' : `-revision-${revision.replaceAll(/[^\w.-]+/g, '-')}`}-shop-pack.zip`
}
