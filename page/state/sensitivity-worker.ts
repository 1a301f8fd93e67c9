/// <reference lib="webworker" />
/** Works through the sensitivities of one design apart from the page and reports each as it is found. It is stopped by being ended. */
import { sensitivities } from '../../engine/index.ts'

addEventListener('message', ({ data }: MessageEvent<string>) => {
  for (const progress of sensitivities(data)) postMessage(progress)
  postMessage('done')
})
