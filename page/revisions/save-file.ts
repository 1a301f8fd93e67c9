/** Has the browser save something as a file, as it saves any other. */
export function saveFile(content: Blob, name: string): void {
  const address = URL.createObjectURL(content)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // The browser has begun to read it by then; what is never given back stays in memory.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
