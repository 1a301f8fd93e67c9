import { useEffect, useState } from 'react'

/** Ends the session on the server, and says so when that failed; nothing where nobody had to sign in. */
export function SignOut() {
  const [canSignOut, setCanSignOut] = useState(false)
  const [fault, setFault] = useState<string>()
  useEffect(() => {
    const ask = async (): Promise<void> => {
      const session = (await (await fetch('/api/session')).json()) as { readonly canSignOut?: boolean }
      setCanSignOut(session.canSignOut === true)
    }
    ask().catch((reason: unknown) => setFault(`It is not known whether you are signed in (${reason}).`))
  }, [])
  const signOut = async (): Promise<void> => {
    try {
      await fetch('/api/sign-out', { method: 'POST' })
      location.replace('/sign-in')
    } catch (reason) {
      setFault(`You are still signed in: the server did not answer (${reason}).`)
    }
  }
  if (!canSignOut && fault === undefined) return null
  return (
    <div>
      {canSignOut ? (
        <button type="button" className="plain" onClick={signOut}>
          Sign out
        </button>
      ) : null}
      {fault === undefined ? null : (
        <p className="aside" role="alert">
          {fault}
        </p>
      )}
    </div>
  )
}
