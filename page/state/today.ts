/** The day here, as 2026-11-27: Sweden writes days so. */
export function today(): string {
  return new Date().toLocaleDateString('sv-SE')
}
