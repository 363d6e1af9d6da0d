/** Figures of the rules on cutting up a board. */
import { LineAtCorner, RowOfWalls, SawnEnd, SlantedCut } from '../../figures/rules/boards.tsx';
import { type FigureTable, N } from './figure-of.tsx';

export const cuttingUp: FigureTable = {
  'resaw-stock': ([clean, rough]) =>
    [clean!, rough!].map(({ t = 0, p = 0, k = 0, value }) => ({
      drawn: (
        <SawnEnd
          title={`Two walls, ${p} mm planed off each face`}
          wall={t}
          planing={p}
          kerf={k}
          thickness={value}
          fill={rough!.value}
        />
      ),
      says: (
        <>
          <N of={p} /> planed off each face, hatched.
        </>
      ),
    })),
  'board-length': ([square, mitered]) => [
    {
      drawn: (
        <RowOfWalls
          title="Four walls in a row"
          walls={[150, 250, 150, 250]}
          kerf={square!.k!}
          spare={square!.m!}
          length={square!.value}
        />
      ),
      says: 'Four parts, three saw cuts between them, and a little at both ends to trim.',
    },
    {
      drawn: <SlantedCut title="A cut at 45 degrees" kerf={mitered!.k!} />,
      says: 'A blade at 45° takes 1.41 kerfs off the face.',
    },
  ],
  'walk-round-order': ([, cut, fourth]) =>
    [cut!, fourth!].map(({ a = 0, value }, i) => ({
      drawn: (
        <LineAtCorner
          title={i === 0 ? 'One of three corners' : 'The fourth corner'}
          high={50}
          slope={a}
          step={value}
        />
      ),
      says:
        i === 0
          ? 'Three corners: only a kerf is missing.'
          : 'The fourth: the end of the strip meets its beginning.',
    })),
};
