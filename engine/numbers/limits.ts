/**
 * Every bound of the program, each with its reason. A bound is there so that no input, however odd, can keep a door
 * waiting, exhaust the memory or drive the arithmetic out of the numbers it can hold.
 */
export const limits = {
  /** Bytes of a design file. A finger with every size typed out is about 20 kB; a hundred times that is no finger. */
  fileBytes: 2_000_000,
  /** Objects and lists inside one another. The format needs 6; the reader is recursive. */
  nesting: 16,
  /** Values of any kind in a design file; the outlines of 20 parts with 1000 corners each make up 60,000. */
  values: 60_000,
  /** Texts of quantities that are kept once they were read: those of fifty designs. A long one is read again each time. */
  knownTexts: 20_000,
  knownTextLetters: 200,
  /** Problems listed of one file. Nobody mends more in one go, and a garbled file could give one a byte. */
  problems: 200,

  /** Bytes of a table of readings: 25,000 rows of 200 letters; whatever is longer is another file. */
  tableBytes: 5_000_000,
  /** Rows of a table below its heading: a lot of a hundred sets with fifty readings each is a quarter of them. */
  tableRows: 20_000,
  /** Columns of a table: those that are known, and several times as many that are passed over. */
  tableColumns: 100,
  /** Letters in a cell of a table: as long as a note in a design. */
  tableCell: 4000,

  /** Parts, pins, stops, springs and toggles of one finger; equations grow with the cube of them. A finger has 6 to 20. */
  parts: 200,
  pins: 300,
  stops: 50,
  springs: 50,
  screws: 50,
  greasePoints: 50,
  toggles: 50,
  /** Holes that one pin goes through. */
  holesOfPin: 12,
  /** Holes, edges and pads each of one part, and corners of its outline. */
  holesOfPart: 100,
  edgesOfPart: 200,
  padsOfPart: 100,
  outlinePoints: 2000,
  /** Screws of one kind across the width of a finger, where two or three have room. */
  screwsSideBySide: 20,
  /** Faces of a part that are masked; who masks more than these names all of a kind at once. */
  maskedOfPart: 100,
  /** Places where a rack touches a part: two hold it, three keep it from turning. */
  racksOfPart: 20,
  /** Slices of a part across the width; a fork has two. */
  acrossOfPart: 10,
  dimensions: 500,
  /** Sizes whose tolerances have prices: a shop is asked about a handful. Their combinations are tried, so that the work grows with their product. */
  pricedSizes: 12,
  /** Other tolerances of one such size. */
  offersOfSize: 6,
  /** Combinations of them of which the frontier is taken; beyond this sizes are left as drawn, those that tell least first. */
  pricedCombinations: 4096,
  /** Measured sizes of one tolerance: a first article has 5, a capability study 100. */
  measuredSizes: 1000,
  materials: 100,
  coatings: 100,
  frictionPairs: 100,
  wearRates: 100,
  loadCases: 50,
  /** Things of which the order in which they give way is asked for; a finger has 10 to 30 pins, parts and springs. */
  givesWay: 100,
  /** Forces, couples and sideways forces each of one load case. */
  forcesOfLoadCase: 50,
  requirements: 300,
  /** A finger of twenty parts is ordered in a dozen steps; a list of everything on the bench has not a hundred lines. */
  orders: 200,
  boughtItems: 200,
  /** Things of one kind in one order. */
  thingsOfOrder: 300,
  /** What no figure says is asked in two dozen lines; a list of ten times that is read by nobody. */
  demands: 300,
  benchTests: 200,
  /** A finger has one to three dozen risks. */
  risks: 300,
  /** Steps of one scale of risk: more than ten cannot be told apart in words. */
  riskSteps: 10,
  /** Ways in which one thing is shown, and controls of one risk. */
  waysShown: 20,
  /** Sets of a batch that are tried for break-even: a workshop of two does not make more in one go. */
  setsOfBatch: 500,

  /** Characters of an id such as `proximalLength`: it has to fit into a table and a figure's name. */
  idLength: 40,
  /** Characters of a title, a name or the name of a material or of a friction pair. */
  nameLength: 120,
  /** Characters of a note, a reason or a source. */
  noteLength: 4000,

  /** Characters of one quantity or expression; the work to read it grows in proportion. */
  expressionLength: 400,
  /** Brackets, signs and powers inside one another in an expression; the parser is recursive. */
  expressionDepth: 32,
  /** Whole powers of a unit, as in cm^3; density and section modulus need no more than 4. */
  unitPower: 6,

  /**
   * Largest values of the inside units. They are far outside any hand tool and keep products of several of them far
   * inside what a double can hold.
   */
  length_mm: 10_000,
  angle_rad: 1000,
  force_N: 1e6,
  couple_Nmm: 1e9,
  springRate_N_mm: 1e9,
  torsionRate_Nmm_rad: 1e12,
  pressure_MPa: 1e7,
  mass_kg: 1000,
  density_kg_mm3: 1e-3,
  /** 1000 mm³ a N·m: ten thousand times what chalk loses. */
  wearRate_mm2_N: 1,
  number: 1e9,

  /** Least diameter, radius, length of an edge and distance of the pins of a toggle: below it a shop cannot make it. */
  sizeLeast_mm: 0.001,
  /** Roughest surface, Ra: grade N12, which is cast or sawn; more is a length that was typed in mm. */
  roughness_mm: 0.05,
  /** Most that a pin may be larger than the hole it is pressed into, as a share of its diameter; more would split a lug. */
  pressFit_ratio: 0.01,
  /** Friction coefficients above this are gears or glue. */
  friction: 2,
  /** A fatigue strength for fewer cycles than this is no more than a static one: the line from 10³ cycles would hang on a point beside it. */
  fatigueCyclesLeast: 1e5,

  /** Newton closes a posture in 3 to 5 rounds from a near start; 30 leaves room for a drawn posture some mm off. */
  settleRounds: 30,
  /** A correction longer than half the mechanism's scale would jump to another assembly. */
  settleStep_ratio: 0.5,
  /** Loops count as closed at 1e-13 of the scale (about 1e-12 mm): 16 digits less the three that summing a loop costs. */
  closureTolerance_ratio: 1e-13,
  /** Where rounding keeps Newton from the tolerance, this much is still closed. */
  closureRounding_ratio: 1e-10,
  /** Pivots that differ by more than this come from loops that do not fix the parts. */
  singular_ratio: 1e-11,
  /** Entries of the reduced closure derivative below this count as zero; they are of order 1 (directions) or lengths over scale. */
  rank_ratio: 1e-9,
  /** Places on the path are closed to this share of the scale: about 2e-10 mm of arc, a tenth of what 1e-9 rad asks for. */
  eventWidth_ratio: 1e-11,
  /** Trials for one root: bisection alone needs 50 for the last bit, every third trial bisects. */
  rootTrials: 160,
  /** Parts on the mount that are tried as the lead of a plan. Most plans are whole with the first; Newton does the rest. */
  leadCandidates: 8,
  /**
   * Sine of the angle between the links of a dyad below which a closed form loses more than two digits and Newton takes
   * over; also the share of the tangent below which the leading part hardly moves.
   */
  closedSine: 0.01,
  /** Largest turn of a part between two marched postures, rad (4°): 57 postures for a finger that closes by 226° at its tip. */
  marchTurn_rad: 0.07,
  /** Share of the tangent that counts as turning when parts mostly slide, so that a wedge is marched too. */
  slowestTurn_ratio: 0.1,
  /** More rounds than this mean that the prediction was poor. */
  marchRounds: 5,
  /** A first correction longer than this share of the step means that the path bends within it. */
  marchCorrection_ratio: 0.2,
  /** Cosine of the largest turn of the tangent in one step: about 20°. */
  marchStraightness_ratio: 0.94,
  /** Steps shorter than this share of 4° are not tried: 2^-20, or 4e-6 of a degree. The march is given up there. */
  marchLeast_ratio: 2 ** -20,
  /** Outlines that reach into each other by less touch: a broken edge is larger. */
  collisionDepth_mm: 0.05,
  /** Slices that share less of the width slide on each other's faces: typed sums of thicknesses round. */
  slidingFaces_mm: 1e-6,
  /** Marched postures of one travel: three whole turns at 4°, four times over for halved steps. */
  marchSteps: 1000,

  /** A port whose power is below this share of its size does no work: its amplitude would be a division by rounding. */
  workless_ratio: 1e-12,
  /** Combinations of slot walls tried: a finger has one or two slots, 16 combinations are four of them. */
  wallTrials: 16,
  /** Newton's rounds for friction at one state: 4 are usual, a poor start takes 10. */
  frictionRounds: 40,
  /**
   * Newton keeps its derivative while each step leaves no more than this share of the residual: the steps that remain then cost less
   * than a new derivative, and a contraction this strong cannot have a determinant of another sign at its end.
   */
  keptDerivative_ratio: 0.1,
  /** Halvings of one Newton step for friction: 2^-12 of a step means that none helps. */
  frictionHalvings: 12,
  /** Steps by which friction is raised from zero when Newton fails from there: enough to halve down to 1 % and come back. */
  frictionRaises: 40,
  /** Friction is not raised by less than this share of itself: a state that ends there ends at a pole. */
  frictionRaiseLeast_ratio: 1 / 128,
  /** Rounds of forces and the points where they touch the friction circles: each doubles the right digits, three or four are usual. */
  touchingRounds: 8,
  /** They have settled when a round changes no force by more than this share of the largest: what is left is its square. */
  touchingChange_ratio: 1e-9,
  /** Joint forces are solved to this share of the largest. */
  frictionTolerance_ratio: 1e-13,
  /** Where rounding keeps Newton from that, this much is still balance. */
  frictionRounding_ratio: 1e-10,
  /** Joints that carry less than this share of the largest force are smoothed, so that their direction has a derivative. */
  unloaded_ratio: 1e-9,
  /** Share of the frictionless amplitude that friction may take before single joints are tried one by one as well. */
  mildFriction_ratio: 0.5,
  /**
   * A force that passes a friction circle within this share of its arm leaves the closed form: it loses that many digits there,
   * and the next posture jams.
   */
  pinchedArm_ratio: 1e-5,
  /** Sine of the tilt of a link's line of force above which the general way takes over: such pins are as large as their link. */
  steepestLine: 0.99,
  /** Rounds of turning joints over in search of the worst rest: each joint settles in one or two. */
  restRounds: 20,
  /** A change of the amplitude below this share is rounding, not a worse state. */
  restGain_ratio: 1e-12,
  /** A joint that turns by less than this share of the fastest may rub on either side: its sense is within the play. */
  slowTurn_ratio: 0.05,
  /** Rounds of posture and forces for clearance and stretch: each gains about two digits, six are enough for 1e-12. */
  takeUpRounds: 40,
  /** Below this share of the largest force the side of a joint is not known: the arms leave out half a clearance, 1e-4 of them. */
  takeUpSide_ratio: 1e-4,
  /** Take-up has settled when no margin moves by more than this, rad; what is left is a hundredth of it. */
  takeUpTolerance_rad: 1e-9,
  /** Steps by √2 in which an opening effort is raised: from 1/8 of its frictionless value to 2000 times, which is a jam in all but name. */
  effortSteps: 28,
  /** Doublings below the frictionless value at which they begin: friction only ever asks for more, other loads may ask for less. */
  effortStepsBelow: 3,
  /** Where the loads do no work in the motion, an effort is looked for from this share of their size. */
  effortLeast_ratio: 1e-2,
  /** An opening effort is closed to this share of itself. */
  effortWidth_ratio: 1e-10,
  /** The drive's coordinate, rad or mm, counts as reached within this: a thousand times what the event is closed to. */
  drive_reached: 1e-7,
  /** Stops nearer than this touch both: a thousandth of what any shop can hold. */
  touching_mm: 1e-6,
  /** Steps of wear from new to the end that is looked at: the margins of 300 steps of 0.02° have moved by 6°. */
  wearSteps: 600,
  /** Largest change of a dead-centre margin in one step of wear, rad (0.02°): what a step leaves out is a hundredth of that. */
  wearStep_rad: (0.02 * Math.PI) / 180,
  /** Trials for the length of one step of wear: each comes down to a fifth at most. */
  wearTrials: 12,
  /** Halvings of the step in which a requirement falls short: 1/256 of 0.02° is far below what anything is known to. */
  wearHalvings: 8,
  /** Part of the stated life that one step may take, so that a curve has points where nothing moves. */
  wearStep_ratio: 1 / 16,
  /** A pointer this near to the closed end, as a share of the travel's arc, stands at it. */
  atClosed_ratio: 1e-6,
  /** Terms of the series and continued fractions of distributions: the slowest, of shapes in the ten thousands, takes some hundreds. */
  distributionTerms: 2000,
  /** Depth of the normal tail's continued fraction: this over x², and the least, leave nothing of its remainder at 16 digits. */
  normalTailDepth: 500,
  normalTailLeast: 8,
  /** Doublings of the range in which a quantile is looked for: from a mean of one to a million times of it. */
  quantileDoublings: 60,
  /** Share of its range that a quantile is closed to. */
  quantileWidth: 1e-15,
  /** Rounds to the nearest failure: three or four are usual on a smooth margin, and a direction that is near is as good. */
  failureRounds: 8,
  /** The search for it has settled when a round moves it by less than this many deviations: its direction is all that is used. */
  failureMoved: 0.05,
  /** Halvings of one round's way that is no better than where it began. */
  failureHalvings: 6,
  /** Halvings that close in the end of a range that a design survives: a thousandth of a step. */
  rangeHalvings: 10,
  /** Samples of one run: at twenty figures each they fill 170 MB, and tell one in ten thousand to a few per cent. */
  spreadSamples: 1_000_000,
  /** Rows of sets that surfaces speak of: drawn in some hundredths of a second, they tell one in a hundred to some hundredths of that. */
  surfaceRows: 8192,
  /** Rows at the most, where much hangs on many sources. */
  surfaceRowsMost: 131_072,
  /** Sets judged for surfaces at the most: beyond it counting is as quick. */
  surfaceJudged: 640,
  /** A surface that goes through its sets to the last digit misses by this, in the number's unit. */
  surfaceMissLeast: 1e-12,
} as const
