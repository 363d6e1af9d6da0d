/** The rules that single steps of the exercises are: what each says, and the page that gives its reason. */

const table = {
  twoWalls: [
    'each corner adds a wall, so outside is inside and two walls',
    'outside-is-inside-plus-two-walls',
  ],
  stack: ['a height is a stack: everything from the table up, added', 'outside-is-inside-plus-two-walls'],
  fingerCount: ['the fingers of both walls together fill the height', 'finger-width'],
  oddCount: ['an odd number of fingers ends with a finger at both edges', 'odd-finger-count'],
  wholeHeight: ['a height of whole fingers leaves no sliver', 'no-sliver-at-the-edge'],
  rings: ['rings across the face or along it decide how much wood moves', 'quarter-sawn-for-lids'],
  air: ['the air decides how moist the wood becomes', 'write-the-humidity'],
  movement: ['wood moves across its grain, with its moisture', 'write-the-humidity'],
  runningRoom: ['room to run is left on the dampest day', 'lid-clearance'],
  gapEachSide: ['a floating panel needs the gap that it will fill', 'gap-beside-the-bottom'],
  driestDay: ['play is widest on the driest day', 'lid-engagement'],
  crept: ['what can creep to one side does, and the other edge loses all of the play', 'lid-engagement'],
  central: ['what is held in the middle loses half at each edge', 'solid-floats-plywood-may-be-glued'],
  engagement: ['enough must stay in the groove on the driest day', 'lid-engagement'],
  gluedAcross: ['wood glued across its grain cannot move', 'never-glue-across-the-grain'],
  pairs: ['opposite walls are equal, so each size counts twice', 'opposite-walls-from-one-stop'],
  kerf: ['every cut between parts eats its kerf', 'board-length'],
  eightCuts: ['the errors of eight cuts meet in the last corner', 'eight-cuts-of-a-miter'],
  miterFace: ['a face cut at 45° is √2 as wide as the wall is thick', 'eight-cuts-of-a-miter'],
  diagonals: ['unequal diagonals tell how far a box leans', 'diagonals'],
  squareEnough: ['a difference of the diagonals has a limit', 'diagonals'],
  grooveInFinger: ['the wall with a finger at the groove shows the hole', 'groove-inside-one-finger'],
  grooveStop: ['a stopped groove ends where the panel’s corner does', 'groove-inside-one-finger'],
  cheeks: ['glue holds on the cheeks between neighboring fingers', 'finger-width'],
  gluedFaces: ['every cheek takes glue, at all four corners', 'dry-fit-in-half-the-open-time'],
  openTime: ['the last joint must be shut within the open time', 'dry-fit-in-half-the-open-time'],
  ratio: ['a ratio is one size divided by the other', 'simple-ratio'],
  insideRatio: [
    'both sides lose two walls, so inside and outside differ in ratio',
    'inside-and-outside-differ',
  ],
  volumeLost: ['walls take room from every side', 'walls-cost-inside-volume'],
  usualWall: ['a wall is usually a twentieth to a thirtieth of the longest side', 'wall-thickness'],
  ringAngle: ['slanting rings mix the two figures', 'read-the-end-grain'],
  resaw: ['each wall out of a board has two faces to plane, and a saw cut parts two walls', 'resaw-stock'],
  timeSquared: ['time goes with the thickness squared', 'thickness-squared'],
  web: ['what is left behind a groove carries the wall', 'groove-depth'],
  lip: ['a lip holds with its thickness squared', 'lip-below-bottom-groove'],
  oneEdge: ['steps cut from one edge add up', 'step-error-adds-up'],
  tap: ['a tap moves a bottom by its thickness squared', 'thicker-bottom-sounds-quieter'],
  sag: ['a bottom bends by its thickness cubed', 'bottom-thickness'],
  sawnLid: ['a lid that is sawn off costs one saw cut', 'sawn-off-lid'],
  rim: ['a rim that rocks loses half of it at two corners', 'sand-the-rim-flat'],
  film: ['each coat on each face takes room', 'no-finish-on-running-surfaces'],
} as const satisfies Record<string, readonly [says: string, rule: string]>;

/** A rule that a step can be. */
export type Principle = keyof typeof table;

export const principles = Object.keys(table) as Principle[];

/** What it says, without capital or full stop. */
export const principleText = (of: Principle): string => table[of][0];
/** The rule page that gives its reason. */
export const principleRule = (of: Principle): string => table[of][1];
