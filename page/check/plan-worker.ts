/// <reference lib="webworker" />
/** Weighs the plan of a design apart from the page: what feels each size. It is stopped by being ended. */
import { inspectionPlan, type Matter, readVariation, weighPlan } from '../../engine/index.ts'
import type { Told } from '../state/background-run.ts'

addEventListener('message', ({ data }: MessageEvent<{ readonly text: string }>) => {
  const { value } = readVariation(data.text)
  if (value === undefined) return
  const plan = inspectionPlan(value)
  const weighing = weighPlan(value, plan)
  for (let step = weighing.next(); ; step = weighing.next()) {
    if (step.done === true) {
      tell({ done: plan.length, of: plan.length, reached: step.value, isAll: true })
      return
    }
    tell({ done: step.value, of: plan.length })
  }
})

function tell(told: Told<readonly (Matter | undefined)[]>): void {
  postMessage(told)
}
