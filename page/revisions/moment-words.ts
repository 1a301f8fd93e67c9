const AS_READ = { year: 'numeric', month: 'short', day: 'numeric', hour: '2-digit', minute: '2-digit', hourCycle: 'h23' } as const

/** A moment as the reader's calendar and clock have it. @param saved ISO 8601 in UTC */
export function momentWords(saved: string): string {
  return new Date(saved).toLocaleString([], AS_READ)
}
