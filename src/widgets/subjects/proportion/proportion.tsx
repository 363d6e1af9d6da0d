/** Labs of the proportion lesson. */

import { modelOf } from '../../../box/subjects/model.ts';
import { proportion } from '../../../box/subjects/proportion/subject.ts';
import { usualRatio } from '../../../box/subjects/proportion/verdicts.ts';
import type { Values } from '../../../box/whole/index.ts';
import { ratio } from '../../../calc/proportion/proportion.ts';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { InsideOutside } from '../../../figures/proportion/InsideOutside.tsx';
import { RatioLine } from '../../../figures/proportion/RatioLine.tsx';
import { wholeRatioText } from '../../../figures/proportion/ratio-text.ts';
import { SixRatios } from '../../../figures/proportion/SixRatios.tsx';
import { WantedRatio } from '../../../figures/proportion/WantedRatio.tsx';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { proportionGuesses } from './proportion-guesses.tsx';

const Ratio = ({ value }: { value: number }) => <Quantity value={value} kind="ratio" digits={2} />;
const Length = ({ value }: { value: number }) => (
  <Quantity value={value} kind="length" digits={1} denominator={32} />
);

/** What two walls take of a side, in percent. */
const Share = ({ of, v }: { of: number; v: Values }) => (
  <Quantity value={100 * ratio.compute({ L: 2 * v.wall, W: of })} kind="percent" digits={0} />
);

/** Said wherever the walls have used up the inside. */
const noInside = 'The walls meet: no inside is left, so it has no ratio.';
const hasInside = (v: Values) => Number.isFinite(v.insideRatio);

/** What gives the length and width; the lab shows the ones in force. */
const size = [
  'sizeFrom',
  'contentsLength',
  'contentsWidth',
  'clearance',
  'wantedLength',
  'wantedWidth',
] as const;

const [low, high] = usualRatio;
/** Which of the two ratios are usual, in words; the longer side counts as the length. */
function inBand(v: Values): string {
  const isUsual = (r: number) => Math.max(r, 1 / r) >= low && Math.max(r, 1 / r) <= high;
  const [outside, inside] = [isUsual(v.outsideRatio), isUsual(v.insideRatio)];
  if (outside && inside) return 'Both are in the usual band.';
  if (outside) return 'Only the outside is in the usual band.';
  return inside ? 'Only the inside is in the usual band.' : 'Neither is in the usual band.';
}

const labs: Record<string, LabSpec> = {
  'inside-outside': {
    title: 'Inside and outside of one box',
    figure: InsideOutside,
    controls: ['wall'],
    more: size,
    results: ['outsideRatio', 'insideRatio'],
    says: (v) =>
      hasInside(v) ? (
        <>
          Two walls take <Length value={2 * v.wall} /> off each side: <Share of={v.outsideLength} v={v} /> of
          the length, but <Share of={v.outsideWidth} v={v} /> of the width. So the outside is{' '}
          <Ratio value={v.outsideRatio} /> times as long as wide, and the inside{' '}
          <Ratio value={v.insideRatio} />.
        </>
      ) : (
        noInside
      ),
  },
  'six-ratios': {
    title: 'One width at six ratios',
    figure: SixRatios,
    controls: ['wall'],
    more: size,
    results: ['outsideRatio', 'insideRatio'],
    says: (v) =>
      hasInside(v) ? (
        <>
          With <Length value={v.wall} /> walls only the square keeps its shape; the longer the box, the more
          the inside differs.
        </>
      ) : (
        noInside
      ),
  },
  'ratio-line': {
    title: 'Where the box stands',
    figure: RatioLine,
    controls: ['contentsLength', 'contentsWidth', 'wantedLength', 'wantedWidth'],
    more: ['wall', 'clearance', 'sizeFrom'],
    results: ['outsideRatio', 'insideRatio', 'heightShare'],
    says: (v) =>
      hasInside(v) ? (
        <>
          Outside <Ratio value={v.outsideRatio} />
          {wholeRatioText(v.outsideRatio)}; inside <Ratio value={v.insideRatio} />
          {wholeRatioText(v.insideRatio)}. {inBand(v)}
        </>
      ) : (
        noInside
      ),
  },
  'wanted-ratio': {
    title: 'The same ratio outside, or inside',
    figure: WantedRatio,
    controls: ['wantedRatio', 'wall'],
    more: size,
    results: ['lengthForRatio', 'widthForRatio', 'lengthForInside', 'wallForInside'],
    says: (v) =>
      hasInside(v) ? (
        <>
          For <Ratio value={v.wantedRatio} /> outside the box must be <Length value={v.lengthForRatio} />{' '}
          long; for the same ratio inside, <Length value={v.lengthForInside} />.
        </>
      ) : (
        noInside
      ),
  },
};

export const lesson = { labs, guesses: proportionGuesses, model: modelOf(proportion) };
export default islandOf(lesson);
