/** The header that has an answer saved as a file: its name in the spelling of RFC 8187 (from memory), because it may hold any letter. */
export function attachment(name: string): { readonly 'Content-Disposition': string } {
  const encoded = encodeURIComponent(name).replace(/['()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`)
  return { 'Content-Disposition': `attachment; filename*=UTF-8''${encoded}` }
}
