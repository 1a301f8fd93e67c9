import type { ErrorHandler } from 'hono'

/**
 * Answers a request that broke off or ran into a fault of ours. A sender who left is no fault; any other is written to the error
 * stream with where it happened, and the sender is told so with 500.
 */
export const faultAnswer: ErrorHandler = (error, context) => {
  if (isCutOff(error)) return context.json({ error: 'the request broke off before its end' }, 400)
  process.stderr.write(`${context.req.method} ${context.req.path}: ${error.stack ?? error.message}\n`)
  return context.json({ error: 'the server made a mistake; its error stream says which' }, 500)
}

/** What reading a body fails with in node:http when the sender has closed the connection. */
function isCutOff(error: Error): boolean {
  return 'code' in error && error.code === 'ECONNRESET'
}
