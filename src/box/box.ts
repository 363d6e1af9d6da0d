/**
 * The one box that runs through the whole notebook: everything the reader decides, nothing that follows from it.
 *
 * Lengths in mm, humidity in % relative humidity, temperature in °C, angles in degrees, forces in N.
 * What follows from these inputs is computed by `evaluate`; nothing reads a result back into an input.
 *
 *          |<------- length ------->|
 *   top    ┌────────────────────────┐  lidLip        wood above the lid's groove
 *          │▒▒▒▒▒▒▒▒▒▒ lid ▒▒▒▒▒▒▒▒▒│  lidThickness
 *          │        headroom        │
 *          │        contents        │
 *          │▒▒▒▒▒▒▒ bottom ▒▒▒▒▒▒▒▒▒│  bottomTongue  the panel's edge in its groove
 *   table  └────────────────────────┘  bottomLip     wood below the bottom's groove
 */
export interface Box {
  /** What the reader calls it. */
  readonly name: string;

  /** The contents as they lie together: one block. */
  readonly contentsLength: number;
  readonly contentsWidth: number;
  readonly contentsHeight: number;
  /** Room on each side of the contents. */
  readonly clearance: number;
  /** Room above the contents. */
  readonly headroom: number;

  /** Which size is given; the others follow. */
  readonly sizeFrom: 'contents' | 'inside' | 'outside';
  /** The wanted size, inside or outside; not used while the contents lead. */
  readonly wantedLength: number;
  readonly wantedWidth: number;
  readonly wantedHeight: number;

  /** Wall thickness, the same on all four sides. */
  readonly wall: number;

  readonly joint: 'finger' | 'mitre' | 'butt';
  /** Width of one finger: the cutter's width. */
  readonly fingerWidth: number;
  /** Slot minus finger. */
  readonly fingerFit: number;
  /** By how much each step of the finger jig is off. */
  readonly stepError: number;

  readonly bottom: 'solid' | 'plywood';
  readonly bottomThickness: number;
  /** Thickness of the bottom's edge where it enters the groove; the rest is rabbeted away underneath. */
  readonly bottomTongue: number;
  /** Wood left between the bottom's groove and the lower edge of the wall. */
  readonly bottomLip: number;
  /** Depth of the bottom's groove. */
  readonly grooveDepth: number;

  /** Thickness of the sliding lid, and the width of its groove. */
  readonly lidThickness: number;
  /** Wood left between the lid's groove and the upper edge of the wall. */
  readonly lidLip: number;
  readonly lidGrooveDepth: number;

  /** Wood id, see `woods.ts`. */
  readonly species: string;
  /** Angle between growth rings and the wide face of bottom and lid: 0 flat-sawn, 90 quarter-sawn. */
  readonly ringAngle: number;

  readonly temperature: number;
  /** Relative humidity where the wood lies today, and at the driest and dampest time of its year. */
  readonly humidityToday: number;
  readonly humidityDry: number;
  readonly humidityDamp: number;

  /** A push by thumb or knuckle that the box has to take. */
  readonly push: number;
}

/** The example of the site (invented): a sliding-lid box for a double-six set of 28 dominoes, two layers of seven by two. */
export const exampleBox: Box = {
  name: 'Domino box',
  contentsLength: 175,
  contentsWidth: 100,
  contentsHeight: 18,
  clearance: 3,
  headroom: 9,
  sizeFrom: 'contents',
  wantedLength: 200,
  wantedWidth: 125,
  wantedHeight: 45,
  wall: 9.5,
  joint: 'finger',
  fingerWidth: 9,
  fingerFit: 0.1,
  stepError: 0.03,
  bottom: 'solid',
  bottomThickness: 6.5,
  bottomTongue: 4,
  bottomLip: 5,
  grooveDepth: 4,
  lidThickness: 5.5,
  lidLip: 3.5,
  lidGrooveDepth: 4,
  species: 'black-cherry',
  ringAngle: 0,
  temperature: 20,
  humidityToday: 45,
  humidityDry: 30,
  humidityDamp: 60,
  push: 50,
};
