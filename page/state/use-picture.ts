import { useEffect, useMemo } from 'react'
import type { Told } from '../../report/index.ts'
import type { Drawn } from './open-design.ts'
import { type Picture, type Pictured, picturedNow, pictureOf, shows } from './picture.ts'

/** What is drawn, and the evaluation with the picture that came with it. */
export interface PictureGround {
  readonly drawn: Told
  readonly came: Drawn | undefined
  readonly asked: Pictured
}

/** The picture that is asked for: the one that came with the evaluation where it shows that, else it is worked out here. */
export function usePicture({ drawn, came, asked }: PictureGround): Picture | undefined {
  useEffect(() => picturedNow.set(asked), [asked])
  return useMemo(() => {
    const picture = came?.evaluation.design === drawn.design ? came.picture : undefined
    return picture !== undefined && shows(picture, asked) ? picture : pictureOf(drawn, asked)
  }, [drawn, came, asked])
}
