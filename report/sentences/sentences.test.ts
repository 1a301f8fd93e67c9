import { describe, expect, it } from 'vitest'
import { caution, verdictSentence } from '../index.ts'
import {
  inventedDesign,
  inventedEvaluation,
  inventedFigure,
  inventedFigures,
  inventedFinding,
  inventedTravel,
} from '../test-support/invented-finger.ts'
import { holdSentence } from './hold-sentence.ts'
import { motionSentence } from './motion-sentence.ts'

const RAD = Math.PI / 180

describe('verdict sentence', () => {
  it('says how the finger stands, who carries each load, and that it lets go', () => {
    // SOURCE hand (the invented figures of the test support, rounded to a tenth of a degree and three digits)
    expect(verdictSentence(inventedEvaluation())).toBe(
      'Closed, pin linkTip stands 8.7° short of dead centre; at rest it would jam below 5.1°: push on the back of the distal (40 N) is ' +
        'carried by the stop; hook load (60 N) and fingertip pinch (15 N) are carried by the wearer, with up to 2.14 N·m at the drive; ' +
        'it lets go, with 14.2 N·mm of drag a pin to spare.',
    )
  })

  it('names the keeper, what it has to carry and the slip angle', () => {
    const keeper = { port: { kind: 'couple', part: 3, against: 0 } as const, allowed: 20 }
    const design = { ...inventedDesign, loadCases: [{ ...inventedDesign.loadCases[0], keeper }] }
    const figures = inventedFigures(
      inventedFigure('loadCase.hook.sustainingLoad', 18, 'N'),
      inventedFigure('loadCase.hook.slipAngle', 13.9 * RAD, 'rad'),
    )
    // SOURCE hand (the numbers just given)
    expect(verdictSentence(inventedEvaluation({ design, figures }))).toContain(
      'at rest it would jam below 5.1° and it slips above 13.9°: it holds 60 N (hook load) with 18 N on the keeper; it lets go',
    )
    const weak = inventedFigures(inventedFigure('loadCase.hook.sustainingLoad', 31, 'N'))
    expect(verdictSentence(inventedEvaluation({ design, figures: weak }))).toContain(
      'it does not hold 60 N (hook load): the keeper would need 31 N and is allowed 20 N',
    )
  })

  it('says where and by how much a finger jams that does not let go', () => {
    const jams = inventedFigures(
      inventedFigure('return.letsGo', false, 'yes or no'),
      inventedFigure('return.reserveFromRest', -3.25, 'N·mm per pin'),
      inventedFigure('return.reserveMoving', -1, 'N·mm per pin'),
    )
    // SOURCE hand (−3.25 N·mm given; set with three digits)
    expect(verdictSentence(inventedEvaluation({ figures: jams }))).toMatch(
      /it jams at 75\.0° of the drive and does not let go: friction outweighs the springs by 3\.25 N·mm a pin\.$/,
    )
  })

  it('says that no stronger spring mends a toggle inside its jam angle', () => {
    const jams = inventedFigures(
      inventedFigure('return.letsGo', false, 'yes or no'),
      inventedFigure('return.reserveFromRest', -3.25, 'N·mm per pin'),
      inventedFigure('closed.toggle.distal.jamAngle', 0.2, 'rad'),
    )
    // SOURCE hand (0.2 rad = 11.459°, set to a tenth of a degree; the invented margin of 8.7° is inside of it)
    expect(verdictSentence(inventedEvaluation({ figures: jams }))).toMatch(
      /at rest friction holds the toggle wherever it is less than 11\.5° short of dead centre; a stronger spring does not mend that/,
    )
  })

  it('says where a load that friction holds and a finger that jams are the same thing', () => {
    const jams = inventedFigures(
      inventedFigure('return.letsGo', false, 'yes or no'),
      inventedFigure('return.reserveFromRest', -3.25, 'N·mm per pin'),
      inventedFigure('return.reserveMoving', -1, 'N·mm per pin'),
      inventedFigure('loadCase.hook.holdsByItself', true, 'yes or no'),
      inventedFigure('loadCase.hook.heldBy', 'toggle with friction', 'words'),
    )
    expect(verdictSentence(inventedEvaluation({ figures: jams }))).toContain(
      'what holds hook load by itself holds the springs too',
    )
  })

  it('tells a finger that may stick from one that jams', () => {
    const sticks = inventedFigures(
      inventedFigure('return.letsGo', false, 'yes or no'),
      inventedFigure('return.reserveFromRest', -3, 'N·mm per pin'),
      inventedFigure('return.reserveMoving', 2, 'N·mm per pin'),
    )
    expect(verdictSentence(inventedEvaluation({ figures: sticks }))).toContain('it may stick at 75.0° of the drive')
  })

  it('says why letting go is undecided', () => {
    const figures = inventedFigures(inventedFigure('return.letsGo', undefined, 'yes or no', 'no spring is given.'))
    expect(verdictSentence(inventedEvaluation({ figures }))).toMatch(/whether it lets go is undecided: no spring is given\.$/)
  })

  it('claims nothing else when the finger does not close', () => {
    const travel = { ...inventedTravel, endsBy: 'breaks' as const, endWords: 'At 62.0° pins B and D are 0.56 mm too far apart.' }
    // SOURCE hand (the end words given)
    expect(verdictSentence(inventedEvaluation({ travel }))).toBe(
      'The finger does not close: at 62.0° pins B and D are 0.56 mm too far apart.',
    )
    expect(holdSentence(inventedEvaluation({ travel }))).toMatch(/^Nothing can be said about holding: the finger does not close/)
  })

  it('says where a finger ends that does not reach its stop', () => {
    const figures = inventedFigures(inventedFigure('motion.closes', false, 'yes or no'))
    const travel = { ...inventedTravel, endsBy: 'range' as const, endWords: 'the drive’s range ends the travel' }
    // SOURCE hand (the last posture of the invented travel stands at 75°)
    expect(verdictSentence(inventedEvaluation({ travel, figures }))).toBe(
      'The finger does not reach its stop: the drive’s range ends the travel at 75.0° of the drive.',
    )
  })

  it('names the shortfall that governs', () => {
    const findings = [inventedFinding('met', 1 * RAD), inventedFinding('short', -1.3 * RAD)]
    // SOURCE hand (1 of the 2 given, margin −1.3°)
    expect(verdictSentence(inventedEvaluation({ findings }))).toContain('1 of 2 requirements falls short')
    expect(verdictSentence(inventedEvaluation({ findings }))).toContain('by 1.3°')
  })

  it('never praises, shouts or promises', () => {
    for (const text of [
      verdictSentence(inventedEvaluation()),
      motionSentence(inventedEvaluation()),
      holdSentence(inventedEvaluation()),
      caution,
    ]) {
      expect(text).not.toMatch(/\bsafe|!/i)
    }
  })
})

describe('motion sentence', () => {
  it('gives the flexion of each joint and what ends the travel', () => {
    // SOURCE hand (75°, 88.2° and 62.6° of the invented figures)
    expect(motionSentence(inventedEvaluation())).toBe(
      'It closes with mcp 75.0°, pip 88.2° and dip 62.6° of flexion; stop closed ends the travel at 75.0° of the drive; closed, pin linkTip ' +
        'stands 8.7° short of dead centre.',
    )
  })
})
