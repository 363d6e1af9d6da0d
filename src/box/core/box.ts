/**
 * The one box that runs through the whole notebook: everything the reader decides, nothing that follows from it.
 *
 * Lengths in mm, humidity in % relative humidity, temperature in °C, angles in degrees, forces in N.
 * What follows from these inputs is computed by `evaluate`; nothing reads a result back into an input.
 *
 * Over 150 lines, because every input is explained where it stands.
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

  /** What goes in; `calc/size/packing` finds how it may lie. */
  readonly items: readonly Item[];
  /** The contents as they lie together: one block, as the reader arranged them. */
  readonly contentsLength: number;
  readonly contentsWidth: number;
  readonly contentsHeight: number;
  /** Room on each side of the contents. */
  readonly clearance: number;
  /** Room above the contents. */
  readonly headroom: number;
  /** Further length for fingers to reach down beside the contents. */
  readonly fingerRoom: number;
  /** Lining on every inside face. */
  readonly lining: number;
  /** Dividers that stand across the length, and across the width. */
  readonly dividersAcross: number;
  readonly dividersAlong: number;
  readonly dividerThickness: number;

  /** Which size is given; the others follow. */
  readonly sizeFrom: 'contents' | 'inside' | 'outside';
  /** The wanted size, inside or outside; not used while the contents lead. */
  readonly wantedLength: number;
  readonly wantedWidth: number;
  readonly wantedHeight: number;
  /** Length to width the reader would like, outside or inside; it moves nothing, it answers "what would it take?". */
  readonly wantedRatio: number;

  /** Wall thickness, the same on all four sides. */
  readonly wall: number;

  /** How it opens: a lid that slides in grooves, one that lifts off, one sawn off the closed box and hinged. */
  readonly kind: 'sliding' | 'lift-off' | 'sawn';

  readonly joint: 'finger' | 'dovetail' | 'mitre' | 'keyed-mitre' | 'splined-mitre' | 'rabbet' | 'butt';
  /** Width of one finger with its share of play: half the pitch. */
  readonly fingerWidth: number;
  /** Slot minus finger. */
  readonly fingerFit: number;
  /** By how much each step of the finger jig is off. */
  readonly stepError: number;

  /** Dovetails: tails on each end of a long wall, length of slope to one of width, width of a full pin at its narrow side. */
  readonly tailCount: number;
  readonly dovetailSlope: number;
  readonly pinWidth: number;
  /** Keys or splines in a miter: how many, how thick. */
  readonly keyCount: number;
  readonly keyThickness: number;

  readonly bottom: 'solid' | 'plywood';
  readonly bottomFit: 'floating' | 'glued';
  readonly bottomSeat: 'groove' | 'rabbet';
  readonly bottomThickness: number;
  /** Thickness of the bottom's edge where it enters the groove; the rest is rabbeted away underneath. */
  readonly bottomTongue: number;
  /** Wood left between the bottom's groove and the lower edge of the wall. */
  readonly bottomLip: number;
  /** Depth of the bottom's groove. */
  readonly grooveDepth: number;
  /** Gap left today at each side of a floating bottom, panel held central. */
  readonly bottomGap: number;

  readonly lid: 'solid' | 'plywood';
  /** A thumb notch cut in the lid, a pull glued across its end, or a finger hole bored through it. */
  readonly pull: 'notch' | 'glued' | 'hole';
  /** How far a glued pull reaches along the lid. */
  readonly pullThickness: number;
  /** Lift-off and sawn lids: height of the lid's walls, and how far a liner stands up above the box. */
  readonly lidHeight: number;
  readonly linerRise: number;
  readonly linerThickness: number;
  /** Room between a lift-off lid and its liner, on each side. */
  readonly lidRoom: number;
  /** Hinges: length of one leaf along the back. */
  readonly hingeLength: number;
  /** Thickness of the lid's panel, and the width of its groove. */
  readonly lidThickness: number;
  /** Wood left between the lid's groove and the upper edge of the wall. */
  readonly lidLip: number;
  readonly lidGrooveDepth: number;
  /** Play left today beside a sliding lid, both sides together. */
  readonly lidPlay: number;
  /** Friction of a sliding lid on its grooves, a pure number, and how far from the lid's middle it is pulled. */
  readonly friction: number;
  readonly pullOffset: number;

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

  /** The board to cut from, as it comes, and what sawing and planing take. */
  readonly boardLength: number;
  readonly boardWidth: number;
  readonly boardThickness: number;
  /** Width of the saw cut. */
  readonly kerf: number;
  /** Planed away on each face. */
  readonly planing: number;
  /** Walls from one strip in walk-round order, or from a resawn pair opened like a book. */
  readonly wallsFrom: 'strip' | 'bookmatched';

  /** The reader's own errors: saw angle in degrees, length of a part in mm. */
  readonly angleError: number;
  readonly lengthError: number;

  /** Verdicts the reader accepts on purpose: the check's id and the reason. */
  readonly accepted: Readonly<Record<string, string>>;
}

/** One thing that goes in the box, lying as it is named: mm. */
export interface Item {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly count: number;
}

/** Whether the front may end inside one of its own fingers: under a sliding lid it is lower than the sides. */
export const frontCutsFingers = ({ kind, joint }: Pick<Box, 'kind' | 'joint'>): boolean =>
  kind === 'sliding' && joint === 'finger';

/** Whether the walls meet at 45°. */
export const isMitered = ({ joint }: Pick<Box, 'joint'>): boolean =>
  joint === 'mitre' || joint === 'keyed-mitre' || joint === 'splined-mitre';
