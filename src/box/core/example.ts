/**
 * The example of the site (invented): a sliding-lid box for a double-six set of 28 dominoes standing on edge, in three
 * rows of ten, two places empty. It exists twice, each on its reader's own rulers: a converted size helps nobody at a
 * bench. While it is untouched, choosing other units swaps it; a box of the reader's own is never converted.
 */
import { INCH, type UnitSystem } from '../../units/index.ts';
import type { Box } from './box.ts';

export const exampleBox: Box = {
  name: 'Domino box',
  items: [{ name: 'domino', length: 50, width: 25, height: 9, count: 28 }],
  contentsLength: 150,
  contentsWidth: 90,
  contentsHeight: 25,
  clearance: 3,
  headroom: 10,
  fingerRoom: 0,
  lining: 0,
  dividersAcross: 0,
  dividersAlong: 0,
  dividerThickness: 4,
  sizeFrom: 'contents',
  wantedLength: 172,
  wantedWidth: 112,
  wantedHeight: 56,
  wantedRatio: 1.5,
  wall: 8,
  kind: 'sliding',
  joint: 'finger',
  fingerWidth: 8,
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
  bottomThickness: 6,
  bottomTongue: 4,
  bottomLip: 9,
  grooveDepth: 4,
  bottomGap: 0.6,
  lid: 'solid',
  pull: 'notch',
  pullThickness: 6,
  lidHeight: 20,
  linerRise: 5,
  linerThickness: 4,
  lidRoom: 0.3,
  hingeLength: 25,
  lidThickness: 4.5,
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
};

const inches = (sizes: { readonly [Name in keyof Box]?: number }) =>
  Object.fromEntries(Object.entries(sizes).map(([name, size]) => [name, size * INCH]));

/** The same box as sold and cut in inches. */
export const inchExample: Box = {
  ...exampleBox,
  items: [{ name: 'domino', length: 2 * INCH, width: INCH, height: (3 / 8) * INCH, count: 28 }],
  ...inches({
    contentsLength: 6,
    contentsWidth: 3 + 3 / 4,
    contentsHeight: 1,
    clearance: 1 / 8,
    fingerRoom: 1 / 8,
    headroom: 5 / 16,
    dividerThickness: 5 / 32,
    wantedLength: 7,
    wantedWidth: 4 + 5 / 8,
    wantedHeight: 2 + 3 / 16,
    wall: 5 / 16,
    fingerWidth: 5 / 16,
    fingerFit: 0.004,
    stepError: 0.001,
    pinWidth: 3 / 16,
    keyThickness: 1 / 8,
    bottomThickness: 1 / 4,
    bottomTongue: 3 / 16,
    bottomLip: 3 / 8,
    grooveDepth: 5 / 32,
    bottomGap: 3 / 128,
    pullThickness: 1 / 4,
    lidHeight: 3 / 4,
    linerRise: 3 / 16,
    linerThickness: 5 / 32,
    lidRoom: 0.012,
    hingeLength: 1,
    lidThickness: 3 / 16,
    lidLip: 1 / 8,
    lidGrooveDepth: 5 / 32,
    lidPlay: 3 / 64,
    pullOffset: 3 / 8,
    boardLength: 36,
    boardWidth: 6,
    boardThickness: 1,
    kerf: 1 / 8,
    planing: 1 / 32,
    lengthError: 0.004,
  }),
};

/** The example for a reader of these units. */
export const exampleFor = (system: UnitSystem): Box => (system === 'inch' ? inchExample : exampleBox);

/** Whether a box is the example, in either units, as nobody has touched it. */
export const isExample = (box: Box): boolean => {
  const text = JSON.stringify(box, Object.keys(exampleBox).sort());
  return [exampleBox, inchExample].some(
    (one) => JSON.stringify(one, Object.keys(exampleBox).sort()) === text,
  );
};
