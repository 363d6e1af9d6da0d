/** Figures of the rules on gluing up. */
import { FaceAcrossLine, FilmBetween, SqueezedOut, WaterReach } from '../../figures/rules/glue.tsx';
import type { FigureTable } from './figure-of.tsx';

/** How far the water of the glue has got a day after gluing in a wood such as walnut, mm. */
const reachOfDay = 2.2;

export const glueUp: FigureTable = {
  'thin-even-film': ([, thick, thin]) => [
    {
      drawn: <FilmBetween title="Faces that touch" film={[thin!.value, thin!.value]} times={90} />,
      says: 'Faces that fit: tape keeps them there. Film drawn 90 times.',
    },
    {
      drawn: (
        <FilmBetween
          title="Faces that do not"
          film={[thin!.value, 2 * thick!.value]}
          times={90}
          pressed="force"
        />
      ),
      says: 'Faces that do not: force at one end, a thick film at the other.',
    },
  ],
  'clamp-time-and-warmth': ([half, day]) => [
    {
      drawn: <WaterReach title="After half an hour" reach={half!.value} />,
      says: 'After half an hour the water is in the skin of the wood.',
    },
    {
      drawn: <WaterReach title="After a day" reach={day!.value} />,
      says: 'After a day it has spread, and the film is hard.',
    },
  ],
  'inside-faces-first': ([much, little]) => [
    {
      drawn: <SqueezedOut title="Spread thick" volume={much!.value} />,
      says: 'Spread thick: half of what is pressed out lands inside. Drawn large.',
    },
    {
      drawn: <SqueezedOut title="Spread thin" volume={little!.value} />,
      says: 'Spread thin: next to none.',
    },
  ],
  'wait-for-the-glue-water': ([, , sunk]) => [
    {
      drawn: <FaceAcrossLine title="The day after" stands={sunk!.value} reach={reachOfDay} times={120} />,
      says: 'The day after: swollen, and planed off. Heights drawn 120 times.',
    },
    {
      drawn: <FaceAcrossLine title="A month later" stands={-sunk!.value} reach={reachOfDay} times={120} />,
      says: 'A month later it is missing.',
    },
  ],
};
