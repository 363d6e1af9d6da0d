/**
 * Boxes worked by hand, one of each kind and the trade's worked examples: every number stands with its arithmetic.
 * Over 150 lines: each box is reckoned by hand from its first size to its last.
 */
import { describe, expect, test } from 'vitest';
import { type Design, designBox } from '../../../src/box/design/design.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { isRefused } from '../../../src/calc/core/refusal.ts';
import { humidityForMoisture } from '../../reference/humidity-for-moisture.ts';
import { exampleBox } from '../reckoned-box.ts';

const part = (design: Design, name: string) => {
  const found = design.parts.find((one) => one.name === name);
  if (!found) throw new Error(`no ${name}`);
  return found;
};
const size = (design: Design, name: string) => {
  const { length, width, thickness } = part(design, name).finished;
  return [length, width, thickness].map((value) => Number(value.toFixed(2)));
};
const groove = (design: Design, of: string, name: 'bottom' | 'lid') =>
  design.grooves.find((one) => one.part === of && one.for === name);
const layout = (design: Design, end: 'front' | 'back', of: 'box' | 'lid' = 'box') =>
  design.corners
    .find((corner) => corner.end === end && corner.of === of)!
    .segments.map(({ from, to, owner }) => [owner, Number(from.toFixed(3)), Number(to.toFixed(3))]);

/** Relative humidity, %, at which wood holds that much moisture at 21 °C. */
const airFor = (moisture: number) => {
  const found = humidityForMoisture(21, moisture);
  if (isRefused(found)) throw new Error(found.refused);
  return found.humidity;
};

describe('a domino box with a sliding lid and finger joints', () => {
  const box: Box = {
    ...exampleBox,
    sizeFrom: 'contents',
    contentsLength: 175,
    contentsWidth: 100,
    contentsHeight: 18,
    clearance: 3,
    headroom: 9.5,
    fingerRoom: 0,
    lining: 0,
    dividersAcross: 0,
    dividersAlong: 0,
    wall: 9.5,
    kind: 'sliding',
    joint: 'finger',
    fingerWidth: 9,
    fingerFit: 0.1,
    bottom: 'solid',
    bottomFit: 'floating',
    bottomSeat: 'groove',
    bottomThickness: 6.5,
    bottomTongue: 4,
    bottomLip: 4.5,
    grooveDepth: 4,
    bottomGap: 0.65,
    lid: 'solid',
    pull: 'notch',
    lidThickness: 5.5,
    lidLip: 3.5,
    lidGrooveDepth: 4,
    lidPlay: 1.2,
    planing: 1,
  };
  const design = designBox(box);

  test('nothing stands in its way', () => expect(design.refusals).toEqual([]));

  test('its walls', () => {
    // Inside 175 + 2·3 = 181 by 100 + 2·3 = 106; outside 181 + 2·9.5 = 200 by 106 + 19 = 125.
    // Height 4.5 + 4 + (18 + 9.5) + 5.5 + 3.5 = 45; the front is lower by lid and lip: 45 − 5.5 − 3.5 = 36.
    expect(size(design, 'left')).toEqual([200, 45, 9.5]);
    expect(size(design, 'right')).toEqual([200, 45, 9.5]);
    expect(size(design, 'back')).toEqual([125, 45, 9.5]);
    expect(size(design, 'front')).toEqual([125, 36, 9.5]);
    // Rough: 12 longer, 6 wider, 1 more on each face.
    expect(part(design, 'left').rough).toEqual({ length: 212, width: 51, thickness: 11.5 });
  });

  test('its fingers: five of 9 mm fill 45 mm, and the front ends with the fourth', () => {
    const fingers = [
      ['side', 0, 9],
      ['end', 9, 18],
      ['side', 18, 27],
      ['end', 27, 36],
      ['side', 36, 45],
    ];
    expect(layout(design, 'back')).toEqual(fingers);
    expect(layout(design, 'front')).toEqual(fingers);
    for (const { sliver } of design.corners) expect(sliver).toBeUndefined();
  });

  test('its grooves: the sides’ fingers fill the corners at both heights, so only the sides are stopped', () => {
    // Bottom: from 4.5 up, 4 + 0.25 wide, to 8.75, below the side's first border at 9. Stop at 9.5 − 4 = 5.5 from each end.
    const bottom = { bottomEdge: 4.5, width: 4.25, depth: 4, edge: 'lower', fromEdge: 4.5 };
    expect(groove(design, 'left', 'bottom')).toMatchObject({ ...bottom, start: 5.5, stop: 194.5 });
    expect(groove(design, 'left', 'bottom')).toMatchObject({ startOpen: false, stopOpen: false });
    expect(groove(design, 'front', 'bottom')).toMatchObject({ ...bottom, start: 0, stop: 125 });
    expect(groove(design, 'back', 'bottom')).toMatchObject({ startOpen: true, stopOpen: true });
    // Lid: 5.5 wide under a lip of 3.5, so from 36 to 41.5, inside the side's last finger from 36 to 45.
    const lid = { bottomEdge: 36, width: 5.5, depth: 4, edge: 'upper', fromEdge: 3.5 };
    // Seen from inside, the right side has its front end on the left: open there, stopped at 200 − 5.5 = 194.5.
    expect(groove(design, 'right', 'lid')).toMatchObject({ ...lid, start: 0, stop: 194.5 });
    expect(groove(design, 'right', 'lid')).toMatchObject({ startOpen: true, stopOpen: false });
    // The left side is its mirror image: stopped 5.5 from its left end, open at the front.
    expect(groove(design, 'left', 'lid')).toMatchObject({ ...lid, start: 5.5, stop: 200 });
    expect(groove(design, 'left', 'lid')).toMatchObject({ startOpen: false, stopOpen: true });
    expect(groove(design, 'back', 'lid')).toMatchObject({ ...lid, start: 0, stop: 125 });
    expect(groove(design, 'front', 'lid')).toBeUndefined();
  });

  test('its bottom', () => {
    // Groove bottom to groove bottom 200 − 2·5.5 = 189 by 125 − 11 = 114; less 0.5 along the grain, 2·0.65 across.
    expect(size(design, 'bottom')).toEqual([188.5, 112.7, 6.5]);
    // Floor at 4.5 + 4 = 8.5, so it lies from 2 to 8.5; its edge of 4 mm from 4.5 up.
    const [{ block, cuts }] = part(design, 'bottom').pieces as never as [
      { block: Record<'x' | 'y' | 'z', [number, number]>; cuts: { to: number }[] },
    ];
    expect(block.z).toEqual([2, 8.5]);
    expect(block.x[0]).toBeCloseTo(5.75, 9);
    expect(block.y[0]).toBeCloseTo(6.15, 9);
    for (const cut of cuts) expect(cut.to).toBe(4.5);
    expect(cuts).toHaveLength(4);
    expect(part(design, 'bottom').grain).toBe('x');
  });

  test('its lid', () => {
    // From the front's face to the back's groove: 200 − 5.5 = 194.5. Width 114 − 1.2 = 112.8. Groove 5.5 − 0.3 = 5.2.
    expect(size(design, 'lid')).toEqual([194.5, 112.8, 5.2]);
    // A notch keeps 3 mm of wood under it: 5.2 − 3 = 2.2 deep.
    expect(design.lidRun?.notch?.depth).toBeCloseTo(2.2, 9);
    expect(design.parts.map(({ name }) => name).sort()).toEqual(
      ['back', 'bottom', 'front', 'left', 'lid', 'right'].sort(),
    );
  });

  test('the wood left of a side', () => {
    // Block 200·45·9.5 = 85 500. Two sockets at each end, 9 + 2·0.1/4 = 9.05 high: 4·9.05·9.5·9.5 = 3267.05.
    // Bottom groove 189·4·4.25 = 3213. Lid groove 194.5·4·5.5 = 4279; it meets the upper sockets, which reach 0.025 above
    // 36, on 9.5 + 4 = 13.5 of its length: 13.5·4·0.025 = 1.35. Left: 85 500 − 3267.05 − 3213 − 4279 + 1.35.
    expect(part(design, 'left').volume).toBeCloseTo(74_742.3, 6);
  });

  test('the room inside', () => {
    expect(design.inside).toEqual({ length: 181, width: 106, height: 27.5 });
    expect(design.insideVolume).toBeCloseTo(181 * 106 * 27.5, 6);
  });

  test('with a glued-on pull', () => {
    // As thick as the walls; as long as the inside less the lid's play, 106 − 1.2 = 104.8; from the lid's top at
    // 36 + 5.2 = 41.2 to the top edge at 45: 3.8 high.
    expect(size(designBox({ ...box, pull: 'glued' }), 'pull')).toEqual([104.8, 3.8, 9.5]);
  });
});

describe('a keepsake box with a lift-off lid and keyed miters', () => {
  const box: Box = {
    ...exampleBox,
    sizeFrom: 'inside',
    wantedLength: 192,
    wantedWidth: 112,
    wantedHeight: 60,
    contentsLength: 150,
    contentsWidth: 100,
    contentsHeight: 40,
    lining: 0,
    wall: 10,
    kind: 'lift-off',
    joint: 'keyed-mitre',
    keyCount: 3,
    keyThickness: 3,
    bottom: 'solid',
    bottomFit: 'floating',
    bottomSeat: 'groove',
    bottomThickness: 6.5,
    bottomTongue: 4,
    bottomLip: 5,
    grooveDepth: 4.2,
    bottomGap: 0.77,
    lid: 'solid',
    lidHeight: 22,
    lidThickness: 6,
    lidLip: 4,
    lidGrooveDepth: 4,
    linerRise: 5,
    linerThickness: 4,
    lidRoom: 0.3,
    species: 'black-walnut',
    ringAngle: 0,
    temperature: 21,
    // Up 3 points and down 2 from 8.5 %.
    humidityToday: airFor(8.5),
    humidityDry: airFor(6.5),
    humidityDamp: airFor(11.5),
  };
  const design = designBox(box);

  test('nothing stands in its way', () => expect(design.refusals).toEqual([]));

  test('its walls and those of its lid, mitered from point to point', () => {
    // Between the walls 192 + 2·4 = 200 by 112 + 8 = 120, for the liner. Outside 200 + 20 = 220 by 120 + 20 = 140; closed height 5 + 4 + 60 + 6 + 4 = 79; the lid takes 22 of it.
    for (const name of ['left', 'right']) expect(size(design, name)).toEqual([220, 57, 10]);
    for (const name of ['front', 'back']) expect(size(design, name)).toEqual([140, 57, 10]);
    for (const name of ['lid-left', 'lid-right']) expect(size(design, name)).toEqual([220, 22, 10]);
    for (const name of ['lid-front', 'lid-back']) expect(size(design, name)).toEqual([140, 22, 10]);
    // A miter takes half of a square of 10 by 10 from each end: 220·57·10 less 57·100 is the block; the groove, 4.25 by
    // 4.2, has its middle line 220 − 2·10 + 4.2 = 204.2 long between the miters; three key slots at each end, 3 high,
    // each half of the triangle with legs of 14.142, 200/4 = 50 of area: 6·3·50 = 900.
    expect(part(design, 'left').volume).toBeCloseTo(125_400 - 5700 - 204.2 * 4.2 * 4.25 - 900, 6);
  });

  test('miters hide through grooves: all four run out', () => {
    for (const name of ['left', 'right', 'front', 'back'])
      expect(groove(design, name, 'bottom')).toMatchObject({ start: 0, startOpen: true, stopOpen: true });
    // 79 − 4 = 75 is the upper side of the lid's groove, 69 its lower side: 12 above the lid's own lower edge at 57.
    expect(groove(design, 'lid-front', 'lid')).toMatchObject({
      bottomEdge: 69,
      width: 6,
      fromEdge: 4,
      stop: 140,
    });
  });

  test('its keys: as deep as the wall along the diagonal', () => {
    // Legs 10·√2 = 14.142, so a long edge of 2·10 = 20 and a height of 10.
    expect(size(design, 'keys')).toEqual([20, 10, 3]);
    // Free height in the box 57 − 9.25 = 47.75: three shares of 15.917, keys in the middle of each.
    const keys = design.corners[0]!.keys.map(({ from, to }) => Number(((from + to) / 2).toFixed(2)));
    expect(keys).toEqual([17.21, 33.13, 49.04]);
    // The lid has 12 mm free below its groove, and so a share of 3·12/47.75 = 0.75: one key, at 6.
    expect(design.corners[2]!.keys).toEqual([{ from: 4.5, to: 7.5 }]);
    // (3 + 1) at each of four corners.
    expect(part(design, 'keys').count).toBe(16);
  });

  test('its bottom', () => {
    // Along 220 − 2·(10 − 4.2) − 0.5 = 207.9; across 140 − 11.6 − 2·0.77 = 126.86.
    expect(size(design, 'bottom')).toEqual([207.9, 126.86, 6.5]);
  });

  test('its lid panel keeps the gap its wood needs', () => {
    // Along 220 − 2·6 − 0.5 = 207.5. Between the grooves 140 − 12 = 128: (128 − 0.5)/(1 + 0.00274·3) = 126.46.
    expect(size(design, 'lid')).toEqual([207.5, 126.46, 5.7]);
  });

  test('its liner', () => {
    // From the floor at 5 + 4 = 9 to 57 + 5 = 62: 53 high.
    for (const name of ['liner-left', 'liner-right']) expect(size(design, name)).toEqual([200, 53, 4]);
    for (const name of ['liner-front', 'liner-back']) expect(size(design, name)).toEqual([120, 53, 4]);
    // 200·53·4 = 42 400 less two half squares of 4 by 4 over 53, 848; above the rim 0.3 off 5 mm of height, from the
    // miters' outer points 0.3 in: (200 − 0.3)·0.3·5 = 299.55.
    expect(part(design, 'liner-left').volume).toBeCloseTo(42_400 - 848 - 299.55, 6);
    expect(design.inside).toEqual({ length: 192, width: 112, height: 60 });
  });

  test('the gap and the hold of the trade’s own sum (worked example W2: walnut, up 3, down 2 points)', () => {
    // Gap ½·127·0.00274·3 + 0.25 = 0.77; hold 4.2 − 0.77 − ½·127·0.00274·2 = 3.08, a little over the wanted 3.
    expect(design.bottom!.playNeeded! / 2).toBeCloseTo(0.77, 2);
    expect(design.bottom!.engagementCentral).toBeCloseTo(3.08, 2);
    // Quarter-sawn, 0.0019: gap 0.61, and 3.9 mm of groove would hold 3.9 − 0.61 − 0.24 = 3.05.
    const quartered = designBox({ ...box, ringAngle: 90, grooveDepth: 3.9, bottomGap: 0.61 });
    expect(quartered.bottom!.playNeeded! / 2).toBeCloseTo(0.61, 2);
    expect(quartered.bottom!.engagementCentral).toBeCloseTo(3.05, 2);
  });
});

describe('a tea box with a sawn-off lid, dovetails and a glued plywood bottom', () => {
  const box: Box = {
    ...exampleBox,
    sizeFrom: 'outside',
    wantedLength: 240,
    wantedWidth: 160,
    wantedHeight: 110,
    lining: 0,
    wall: 10,
    kind: 'sawn',
    kerf: 2,
    hingeLength: 30,
    lidHeight: 30,
    joint: 'dovetail',
    tailCount: 3,
    dovetailSlope: 8,
    pinWidth: 6,
    bottom: 'plywood',
    bottomFit: 'glued',
    bottomSeat: 'groove',
    bottomThickness: 4,
    bottomTongue: 4,
    bottomLip: 6,
    grooveDepth: 3,
    lid: 'solid',
    lidThickness: 6,
    lidLip: 5,
    lidGrooveDepth: 4,
    planing: 1,
    species: 'black-cherry',
    ringAngle: 0,
    temperature: 21,
    humidityToday: airFor(8.5),
    humidityDry: airFor(6.2),
    humidityDamp: airFor(12),
  };
  const design = designBox(box);

  test('nothing stands in its way', () => expect(design.refusals).toEqual([]));

  test('its walls are cut with the kerf in their height, and become two pieces', () => {
    // 110 + 2 = 112 glued up; sawn from 110 − 30 = 80 to 82.
    expect(design.saw).toEqual({ from: 80, to: 82 });
    for (const name of ['left', 'right']) expect(size(design, name)).toEqual([240, 112, 10]);
    for (const name of ['front', 'back']) expect(size(design, name)).toEqual([160, 112, 10]);
    expect(part(design, 'front').rough).toEqual({ length: 172, width: 118, thickness: 12 });
    const heights = part(design, 'left').pieces.map(({ block, opens }) => [...block.z, opens]);
    expect(heights).toEqual([
      [0, 80, false],
      [80, 110, true],
    ]);
  });

  test('its dovetails', () => {
    // 112/3 = 37.333 for tail and pin; tails 37.333 − 6 = 31.333 on the face; half-pins 3. Taper 10/8 = 1.25.
    expect(layout(design, 'front')).toEqual([
      ['end', 0, 3],
      ['side', 3, 34.333],
      ['end', 34.333, 40.333],
      ['side', 40.333, 71.667],
      ['end', 71.667, 77.667],
      ['side', 77.667, 109],
      ['end', 109, 112],
    ]);
    expect(design.corners[0]!.taper).toBe(1.25);
  });

  test('its grooves lie inside tails, so the sides are stopped and the ends run out', () => {
    // Bottom from 6 to 10.25, inside the tail from 3 to 34.3: stop at 10 − 3 = 7.
    expect(groove(design, 'right', 'bottom')).toMatchObject({
      bottomEdge: 6,
      width: 4.25,
      start: 7,
      stop: 233,
    });
    expect(groove(design, 'back', 'bottom')).toMatchObject({ start: 0, stop: 160, startOpen: true });
    // Lid: as glued up from 101 to 107, inside the tail from 77.7 to 109, which is at its root still 109 − 1.25 = 107.75:
    // stop at 10 − 4 = 6. In the finished box at 99.
    expect(groove(design, 'left', 'lid')).toMatchObject({
      bottomEdge: 99,
      fromEdge: 5,
      start: 6,
      stop: 234,
    });
    expect(groove(design, 'front', 'lid')).toMatchObject({ start: 0, stop: 160, stopOpen: true });
  });

  test('a lid groove one millimeter higher would meet the root of a pin, and show on the ends too', () => {
    // From 102 to 108 as glued up; the upper half-pin reaches down to 109 − 1.25 = 107.75 at its root.
    const higher = designBox({ ...box, lidLip: 4 });
    expect(groove(higher, 'left', 'lid')).toMatchObject({ startOpen: false, stopOpen: false });
    expect(groove(higher, 'front', 'lid')).toMatchObject({ startOpen: false, start: 6 });
  });

  test('its bottom and its lid panel', () => {
    // Glued: 240 − 2·7 = 226 by 160 − 14 = 146, no gap.
    expect(size(design, 'bottom')).toEqual([226, 146, 4]);
    expect(design.bottom).toMatchObject({ gapAcross: 0, gapAlong: 0, glued: true });
    // Along 240 − 12 − 0.5 = 227.5; between the grooves 148: (148 − 0.5)/(1 + 0.00248·3.5) = 146.23; 6 − 0.3 thick.
    expect(size(design, 'lid')).toEqual([227.5, 146.23, 5.7]);
  });

  test('its hinges stand one hinge length in from each end of a long side', () => {
    expect(design.hinges).toEqual({
      wall: 'right',
      length: 30,
      places: [
        [30, 60],
        [180, 210],
      ],
    });
  });

  test('the room inside', () => {
    // 240 − 20 = 220, 160 − 20 = 140, from 10 to 99.
    expect(design.inside).toEqual({ length: 220, width: 140, height: 89 });
  });
});

describe('the pencil box of worked example W1', () => {
  // Stack 5 + 4 + 37 + 5 + 5 = 56, which is seven fingers of 8. Groove 8/3, about 2.7.
  const box: Box = {
    ...exampleBox,
    sizeFrom: 'inside',
    wantedLength: 203,
    wantedWidth: 70,
    wantedHeight: 37,
    contentsLength: 190,
    contentsWidth: 60,
    contentsHeight: 30,
    wall: 8,
    kind: 'sliding',
    joint: 'finger',
    fingerWidth: 8,
    pull: 'notch',
    bottom: 'plywood',
    bottomFit: 'floating',
    bottomThickness: 4,
    bottomTongue: 4,
    bottomLip: 5,
    grooveDepth: 2.7,
    bottomGap: 0.5,
    lid: 'solid',
    lidThickness: 5,
    lidLip: 5,
    lidGrooveDepth: 2.7,
    lidPlay: 0.63,
    species: 'black-cherry',
    ringAngle: 90,
    temperature: 21,
    humidityToday: 45,
    humidityDry: 30,
    humidityDamp: 65,
  };
  const design = designBox(box);

  test('outside 219 by 86, seven fingers in 56', () => {
    expect(size(design, 'left')).toEqual([219, 56, 8]);
    expect(size(design, 'back')).toEqual([86, 56, 8]);
    expect(layout(design, 'back')).toHaveLength(7);
    // The front ends at 56 − 5 − 5 = 46, within the finger from 40 to 48: 6 mm of it are left.
    expect(size(design, 'front')).toEqual([86, 46, 8]);
    expect(design.corners[0]!.sliver).toBe(6);
  });

  test('its grooves cross from one finger into the next, so all ends that show are stopped at 5.3', () => {
    // Bottom from 5 to 9.25 crosses the border at 8; lid from 46 to 51 crosses the one at 48. 8 − 2.7 = 5.3.
    for (const name of ['left', 'right', 'front', 'back'])
      expect(groove(design, name, 'bottom')).toMatchObject({ startOpen: false, stopOpen: false });
    expect(groove(design, 'front', 'bottom')!.start).toBeCloseTo(5.3, 9);
    expect(groove(design, 'back', 'lid')!.start).toBeCloseTo(5.3, 9);
  });

  test('a quarter-sawn lid 74.8 wide holds 1.85 on the driest day', () => {
    // Groove to groove 75.4; 75.4·0.00126·3.5 = 0.33, + 0.3 = 0.63; 75.4 − 0.63 = 74.77.
    expect(design.lid!.playNeeded).toBeCloseTo(0.63, 1);
    expect(design.lid!.width).toBeCloseTo(74.8, 1);
    // A further 0.22 down to 30 %: play 0.85, worst hold 2.7 − 0.85 = 1.85.
    expect(design.lidRun!.playAtDriest).toBeCloseTo(0.85, 1);
    expect(design.lidRun!.engagement).toBeCloseTo(1.85, 1);
  });

  test('flat-sawn it would be 74.4 wide and hold only 1.3', () => {
    const flat = designBox({ ...box, ringAngle: 0, lidPlay: 0.95 });
    expect(flat.lid!.playNeeded).toBeCloseTo(0.95, 1);
    expect(flat.lid!.width).toBeCloseTo(74.4, 1);
    expect(flat.lidRun!.playAtDriest).toBeCloseTo(1.4, 1);
    expect(flat.lidRun!.engagement).toBeCloseTo(1.3, 1);
  });
});

test('the lid of worked example W3, 120 mm of flat-sawn hard maple made at 35 %, jams at 65 %', () => {
  // 120·0.00353·5.0 = 2.1 of growth, and only 0.3 of play. Inside 120 + 0.3 − 2·3 = 114.3.
  const box: Box = {
    ...exampleBox,
    kind: 'sliding',
    sizeFrom: 'inside',
    wantedWidth: 114.3,
    lidGrooveDepth: 3,
    lidPlay: 0.3,
    lid: 'solid',
    species: 'sugar-maple',
    ringAngle: 0,
    temperature: 21,
    humidityToday: 35,
    humidityDry: 30,
    humidityDamp: 65,
  };
  const made = designBox(box);
  expect(made.lid!.width).toBeCloseTo(120, 9);
  expect(made.lid!.playAtDampest).toBeCloseTo(0.3 - 2.1, 1);
  // Dried to 45 % it still needs 120·0.00353·3.5 + 0.3 = 1.8 in all.
  expect(designBox({ ...box, humidityToday: 45 }).lid!.playNeeded).toBeCloseTo(1.8, 1);
  // Quarter-sawn it would have grown 120·0.00165·5.0 = 1.0.
  expect(designBox({ ...box, ringAngle: 90 }).lid!.playAtDampest).toBeCloseTo(0.3 - 1.0, 1);
});
