/**
 * What a link differs from, by its version. A link says only what is unlike its base, so a base never changes: the
 * example may, and no link that is printed somewhere moves with it. An input that is younger than a base stands in none
 * of its links and has the value it starts from; a link that is made today always says it.
 */
import { exampleBox } from '../box/subjects/example.ts';
import type { Box } from '../box/subjects/inputs.ts';

/** The example of the site when links of version 1 were made. */
const first = {
  name: 'Domino box',
  items: [{ name: 'domino', length: 50, width: 25, height: 9, count: 28 }],
  contentsLength: 175,
  contentsWidth: 100,
  contentsHeight: 18,
  clearance: 3,
  headroom: 9.5,
  fingerRoom: 0,
  lining: 0,
  dividersAcross: 0,
  dividersAlong: 0,
  dividerThickness: 4,
  sizeFrom: 'contents',
  wantedLength: 200,
  wantedWidth: 125,
  wantedHeight: 45,
  wantedRatio: 1.6,
  wall: 9.5,
  kind: 'sliding',
  joint: 'finger',
  fingerWidth: 9,
  fingerFit: 0.1,
  stepError: 0.03,
  tailCount: 2,
  dovetailSlope: 7,
  pinWidth: 5,
  keyCount: 2,
  keyThickness: 3,
  bottom: 'solid',
  bottomFit: 'floating',
  bottomSeat: 'groove',
  bottomThickness: 6.5,
  bottomTongue: 3.5,
  bottomLip: 5,
  grooveDepth: 4,
  bottomGap: 0.65,
  lid: 'solid',
  pull: 'notch',
  // A pull was as thick as the walls, 9.5 mm in this base.
  pullThickness: 9.5,
  lidHeight: 20,
  linerRise: 5,
  linerThickness: 4,
  lidRoom: 0.3,
  hingeLength: 25,
  lidThickness: 5.5,
  lidLip: 3.5,
  lidGrooveDepth: 4,
  lidPlay: 1.2,
  friction: 0.46,
  pullOffset: 10,
  species: 'black-cherry',
  ringAngle: 0,
  temperature: 20,
  humidityToday: 45,
  humidityDry: 30,
  humidityDamp: 60,
  push: 50,
  boardLength: 900,
  boardWidth: 150,
  boardThickness: 26,
  kerf: 3,
  planing: 1,
  wallsFrom: 'strip',
  angleError: 0.1,
  lengthError: 0.1,
  accepted: {},
} as const satisfies Partial<Box>;

/** The example when links of version 2 were made. */
const second = {
  ...first,
  contentsLength: 150,
  contentsWidth: 90,
  contentsHeight: 25,
  headroom: 10,
  wantedLength: 172,
  wantedWidth: 112,
  wantedHeight: 56,
  wantedRatio: 1.5,
  wall: 8,
  fingerWidth: 8,
  bottomThickness: 6,
  bottomTongue: 4,
  bottomLip: 9,
  bottomGap: 0.6,
  pullThickness: 6,
  lidThickness: 4.5,
} as const satisfies Partial<Box>;

/** The example when links of version 3 were made: parts cut against a stop. */
const third = {
  ...second,
  lengthError: 0.05,
  diagonalsApart: 0,
  rock: 0,
} as const satisfies Partial<Box>;

const known: Readonly<Record<number, Partial<Box>>> = { 1: first, 2: second, 3: third };
export const newest = 3;

/** Whether the base of the links that are made today has this input; a younger one is always said. */
export const isInBase = (name: string): boolean => Object.hasOwn(known[newest]!, name);

/** Bases by version of link; the newest is written. */
export const bases: Readonly<Record<number, Box>> = Object.fromEntries(
  Object.entries(known).map(([version, base]) => [version, { ...exampleBox, ...base }]),
);
