/** Small sizes that the box has no input for. mm. All are common practice, no source, unless marked. */
export const practice = {
  /** A bottom's groove is wider than its tongue by this (usual 0.2 to 0.3). */
  bottomSlip: 0.25,
  /** A lid's panel is thinner than its groove by this (usual 0.2 to 0.4). */
  lidSlip: 0.3,
  /** Free length of a solid panel along the grain, both ends together. */
  alongGrain: 0.5,
  /** Room on each edge of a plywood lid panel held in four walls. */
  plywoodRoom: 0.5,
  /** The rabbet under a bottom reaches this much further than its groove is deep, so that the tongue meets wood first: ours. */
  rabbetBeyondGroove: 0.5,
  /** Cut longer and wider than finished, to trim. */
  extraLength: 12,
  extraWidth: 6,
  /** Thumb notch: width, most depth, least wood under it, distance from the lid's end, length of its slope (the last: ours). */
  notchWidth: 22,
  notchDepth: 4,
  notchFloor: 3,
  notchFromEnd: 22,
  notchRun: 18,
  /** Finger hole through a lid: diameter (18 to 25 usual), from the lid's end to its middle (ours). */
  fingerHole: 20,
  holeFromEnd: 28,
  /** Depth of a spline's groove in each miter face as a share of the wall (at most 1/2 is usual; the share is ours), and its least depth. */
  splineShare: 1 / 3,
  splineLeast: 1,
  /** Oven-dry to air-dry plywood varies; g/cm³, from memory. */
  plywoodDensity: 0.65,
} as const;
