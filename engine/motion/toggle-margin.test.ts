import { describe, expect, it } from 'vitest'
import { assembled, driven } from '../sketches/assembled.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { plainToggle } from '../sketches/plain-toggle.ts'
import { pinCentre } from './mechanism.ts'
import { toggleCouples, toggleMargin, watchToggle } from './toggle-margin.ts'

describe('the dead-centre margin', () => {
  it('is the angle of the law of cosines', () => {
    const put = assembled(finger())
    const { design } = put.mechanism
    const [toggle] = design.toggles
    const watched = watchToggle(put.mechanism, toggle, put.posture)
    for (let mcp = -20; mcp <= 77; mcp += 1) {
      const posture = driven(put, mcp * DEG)
      const at = (pin: number) => pinCentre(put.mechanism, posture, pin)
      const span = (p: ReturnType<typeof at>, q: ReturnType<typeof at>) => Math.hypot(q.x_mm - p.x_mm, q.y_mm - p.y_mm)
      const [ab, bc, ac] = [span(at(toggle.a), at(toggle.b)), span(at(toggle.b), at(toggle.c)), span(at(toggle.a), at(toggle.c))]
      // SOURCE hand: cos δ = (|AC|² − |AB|² − |BC|²) / (2 |AB| |BC|); near dead centre the arccos loses half of its digits
      const byCosines = Math.acos((ac * ac - ab * ab - bc * bc) / (2 * ab * bc))
      expect(Math.abs(toggleMargin(watched, posture) - byCosines)).toBeLessThan(1e-12 / Math.sin(byCosines))
    }
  })

  it('is counted positive on the side where it is drawn', () => {
    for (const design of [finger(), plainToggle()]) {
      const { mechanism, posture } = assembled(design)
      const margin = toggleMargin(watchToggle(mechanism, design.toggles[0], posture), posture)
      expect(margin).toBeGreaterThan(0)
      expect(margin).toBeLessThan(Math.PI)
    }
  })

  it('of a folded toggle is counted from the folded-back position', () => {
    const straight = plainToggle()
    const folded = { ...straight, toggles: [{ ...straight.toggles[0], folded: true }] }
    const { mechanism, posture } = assembled(straight)
    const margin = toggleMargin(watchToggle(mechanism, straight.toggles[0], posture), posture)
    // SOURCE hand: straight and folded-back lie half a turn apart
    expect(toggleMargin(watchToggle(mechanism, folded.toggles[0], posture), posture)).toBeCloseTo(Math.PI - margin, 12)
  })

  it('counts on past half a turn', () => {
    const { mechanism, posture } = assembled(plainToggle())
    const watched = watchToggle(mechanism, mechanism.design.toggles[0], posture)
    const before = toggleMargin(watched, posture)
    const turned = posture.slice()
    turned[8] -= 1.5 * Math.PI
    // SOURCE hand: link BC alone turned on clockwise by 270°; B lies above A-C, so that takes the margin up
    expect(toggleMargin(watched, turned)).toBeCloseTo(before + 1.5 * Math.PI, 12)
  })

  it('is opened by a unit couple on each of its two parts', () => {
    const { mechanism, posture } = assembled(finger())
    const watched = watchToggle(mechanism, mechanism.design.toggles[0], posture)
    for (const { part, couple } of toggleCouples(watched)) {
      const turned = posture.slice()
      turned[3 * part + 2] += 1e-3
      // SOURCE property: the couple is the derivative of the margin by the part's turn
      expect((toggleMargin(watched, turned) - toggleMargin(watched, posture)) / 1e-3).toBeCloseTo(couple, 9)
    }
  })
})
