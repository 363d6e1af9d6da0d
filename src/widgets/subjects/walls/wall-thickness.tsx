/** Labs of the lesson on wall thickness and size. */

import { modelOf } from '../../../box/subjects/model.ts';
import { walls } from '../../../box/subjects/walls/subject.ts';
import type { Values } from '../../../box/whole/index.ts';
import { bendsAsBeam } from '../../../calc/walls/side-push.ts';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { heaviness } from '../../../figures/walls/heaviness.ts';
import { SameWall } from '../../../figures/walls/SameWall.tsx';
import { SidePush } from '../../../figures/walls/SidePush.tsx';
import { WallSection } from '../../../figures/walls/WallSection.tsx';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { wallThicknessGuesses } from './wall-thickness-guesses.tsx';

const hollow = (v: Values) => Math.min(v.insideLength, v.insideWidth, v.insideHeight) > 0;
const longest = (v: Values) => Math.max(v.outsideLength, v.outsideWidth, v.outsideHeight);

const labs: Record<string, LabSpec> = {
  'heavy-or-thin': {
    title: 'Walls that thicken',
    figure: WallSection,
    controls: ['wall'],
    more: ['sizeFrom', 'wantedLength', 'wantedWidth', 'wantedHeight', 'species'],
    results: ['wallShareOfLength', 'wallShareOfWidth', 'shareNotInside', 'emptyMass'],
    says: (v) => (
      <>
        Walls of <Quantity value={v.wall} kind="length" denominator={32} /> are{' '}
        {heaviness(v.wall, longest(v))} for this size
        {hollow(v) ? (
          <>
            , and <Quantity value={v.shareNotInside} kind="percent" digits={0} /> of the outside is no use to
            the contents.
          </>
        ) : (
          ', and no inside is left.'
        )}
      </>
    ),
  },
  'same-wall': {
    title: 'Three sizes, one wall',
    figure: SameWall,
    controls: ['wall'],
    more: ['sizeFrom', 'wantedLength', 'wantedWidth'],
    results: ['thinnestUsualWall', 'thickestUsualWall'],
    says: (v) => (
      <>
        The same <Quantity value={v.wall} kind="length" denominator={32} /> wall is{' '}
        {heaviness(v.wall, longest(v) / 2)} at half the size, {heaviness(v.wall, longest(v))} here and{' '}
        {heaviness(v.wall, longest(v) * 2)} at double.
      </>
    ),
  },
  'side-push': {
    title: 'A thumb on the side',
    figure: SidePush,
    controls: ['wall'],
    more: ['push', 'sizeFrom', 'wantedLength', 'wantedHeight', 'species'],
    results: ['sidePushFree', 'sidePushHeld', 'sidePushStress'],
    says: (v) =>
      Number.isNaN(v.sidePushFree) ? (
        'The tables give no stiffness for this wood.'
      ) : !bendsAsBeam(v.insideLength, v.wall) ? (
        'So thick for its length, this side is a block: a thumb does not bend it.'
      ) : (
        <>
          A push of <Quantity value={v.push} kind="force" /> bends this side by{' '}
          <Quantity value={v.sidePushHeld} kind="length" as="fine" /> to{' '}
          <Quantity value={v.sidePushFree} kind="length" as="fine" />; a sheet of paper is about{' '}
          <Quantity value={0.1} kind="length" as="fine" />.
        </>
      ),
  },
};

export const lesson = { labs, guesses: wallThicknessGuesses, model: modelOf(walls) };
export default islandOf(lesson);
