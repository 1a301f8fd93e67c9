import { describe, expect, it } from 'vitest'
import { rubbedVolume } from './archard.ts'
import { BORE_SECTORS, boreSector, wornBore } from './worn-bore.ts'
import { stopDepth, stopVolume } from './worn-stop.ts'

const depthsAt = (entries: Readonly<Record<number, number>>): Float64Array => {
  const depths = new Float64Array(BORE_SECTORS)
  for (const [degrees, depth] of Object.entries(entries)) depths[boreSector((Number(degrees) * Math.PI) / 180)] += depth
  return depths
}

describe('a worn hole', () => {
  it('pressed one way lets the pin stand off by the whole depth there and by nothing more opposite', () => {
    const { shift, growth_mm, depth_mm } = wornBore(depthsAt({ 90: 0.03 }))
    // SOURCE hand (half a growth of 0.03 and a shift of 0.015: 0.03 that way, 0 the other)
    expect(growth_mm / 2 + shift.y_mm).toBeCloseTo(0.03, 12)
    expect(growth_mm / 2 - shift.y_mm).toBeCloseTo(0, 12)
    expect(shift.x_mm).toBeCloseTo(0, 12)
    expect(depth_mm).toBeCloseTo(0.03, 12)
  })

  it('pressed both ways alike only grows', () => {
    const { shift, growth_mm } = wornBore(depthsAt({ 0: 0.02, 180: 0.02 }))
    // SOURCE hand (0.02 each way)
    expect(growth_mm).toBeCloseTo(0.04, 12)
    expect(Math.hypot(shift.x_mm, shift.y_mm)).toBeCloseTo(0, 12)
  })

  it('pressed all round grows by the loss over its whole wall', () => {
    const round = new Float64Array(BORE_SECTORS).fill(0.05 / BORE_SECTORS)
    // SOURCE other-method (a volume of 0.05 d w off a wall π d w: 0.05 / π deep everywhere, twice that on the diameter)
    expect(wornBore(round).growth_mm).toBeCloseTo((2 * 0.05) / Math.PI, 4)
  })

  it('loses the volume that its wall tells', () => {
    const depths = depthsAt({ 10: 0.01, 60: 0.02, 200: 0.004 })
    const [diameter, width] = [3, 6]
    let volume = 0
    const pieces = 3600
    for (let piece = 0; piece < pieces; piece++) {
      const angle = (2 * Math.PI * piece) / pieces
      depths.forEach((depth, sector) => {
        const there = Math.cos(angle - (2 * Math.PI * sector) / BORE_SECTORS)
        volume += depth * Math.max(0, there) * (diameter / 2) * ((2 * Math.PI) / pieces) * width
      })
    }
    // SOURCE property (integral of the depth over the wall against depth × projected area)
    expect(volume).toBeCloseTo(0.034 * diameter * width, 5)
  })
})

describe('a worn stop', () => {
  const contact = { width_mm: 11, curvature_1_mm: 1 / 1.5 }

  it('goes from volume to depth and back', () => {
    // SOURCE property (one is the inverse of the other)
    expect(stopDepth(contact, stopVolume(contact, 0.012))).toBeCloseTo(0.012, 12)
  })

  it('is the segment that a flat cuts off a round', () => {
    const [radius, depth] = [1.5, 0.01]
    const half = Math.acos((radius - depth) / radius)
    // SOURCE hand (segment of a circle: r² (α − sin α cos α), α = arccos((r − h)/r))
    const segment = radius ** 2 * (half - Math.sin(half) * Math.cos(half))
    expect(stopVolume(contact, depth) / (segment * contact.width_mm)).toBeCloseTo(1, 2)
  })

  it('deepens ever more slowly', () => {
    const [one, eight] = [1, 8].map((times) => stopDepth(contact, times * 0.01))
    expect(eight / one).toBeCloseTo(4, 9) // SOURCE hand (8^(2/3))
  })
})

it('the specific rate is that of the coefficient over the hardness', () => {
  // SOURCE hand (1e-4 / 1000 MPa × 50 N × 1e6 mm = 5 mm³)
  expect(rubbedVolume(1e-4 / 1000, 50 * 1e6)).toBeCloseTo(5, 9)
})
