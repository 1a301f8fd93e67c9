/** TEST SUPPORT. Root may write everywhere, whatever the permissions say, so it is taken off for a while. */

/** A user id that owns nothing: `nobody` on most systems. */
const NOBODY = 65_534

/** Does something as a user who owns none of the files at hand; somebody who is not root stays who they are. */
export async function asAnotherUser<Result>(work: () => Promise<Result>): Promise<Result> {
  const isRoot = process.geteuid?.() === 0
  if (isRoot) process.seteuid?.(NOBODY)
  try {
    return await work()
  } finally {
    if (isRoot) process.seteuid?.(0)
  }
}
