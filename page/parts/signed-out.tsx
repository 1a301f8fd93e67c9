import { useEffect } from 'react'
import type { DesignStore } from '../state/design-store.ts'
import { isSignedIn, useSignedIn } from '../state/signed-in.ts'

/** Says that the session has ended and leads to signing in, on a page of its own so that nothing is lost here; on the way back the work goes on. */
export function SignedOut({ store }: { readonly store: DesignStore }) {
  const isIn = useSignedIn()
  useEffect(() => {
    if (isIn) return
    const comeBack = async (): Promise<void> => {
      // A server that does not answer is asked again at the next return.
      if (await isSignedIn().catch(() => false)) store.comeBack()
    }
    addEventListener('focus', comeBack)
    return () => removeEventListener('focus', comeBack)
  }, [isIn, store])
  if (isIn) return null
  return (
    <p role="alert">
      You are no longer signed in.{' '}
      <a href="/sign-in" target="_blank" rel="noreferrer">
        Sign in on another page
      </a>{' '}
      and come back: what you did here is still here, and is kept then.
    </p>
  )
}
