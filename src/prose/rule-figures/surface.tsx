/** Figures of the rules on flat rims, papers, films and mixes. */
import { PAPER } from '../../calc/finish/coats.ts';
import { grits } from '../../calc/finish/grits.ts';
import { Layers, SixFaces } from '../../figures/rules/batch.tsx';
import { CoatsAndPaper, Papers, RimInARow, TongueSides } from '../../figures/rules/surface.tsx';
import { type FigureTable, N } from './figure-of.tsx';

/** The papers from one grit to another, as the shop has them. */
const row = (from: number, to: number) => grits.filter((grit) => grit >= from && grit <= to);

export const surface: FigureTable = {
  'sand-the-rim-flat': ([e]) =>
    [false, true].map((flat) => ({
      drawn: (
        <RimInARow
          title={flat ? 'The rim rubbed flat' : 'A rim that rocks'}
          rock={e!.h!}
          loss={e!.value}
          flat={flat}
          times={120}
        />
      ),
      says: flat
        ? 'Flat: corners 1 and 3 lose half of it each, 2 and 4 nothing.'
        : 'Once around: corner 4 is low by the rock. Heights drawn 120 times.',
    })),
  grits: ([one, two]) => [
    {
      drawn: <Papers title="No paper left out" row={row(one!.G_1!, two!.G_2!)} />,
      says: 'Each takes away the scratches of the last.',
    },
    {
      drawn: <Papers title="Two left out" row={[two!.G_1!, two!.G_2!]} />,
      says: (
        <>
          Two left out: a step of <N of={two!.value} kind="number" digits={2} />.
        </>
      ),
    },
  ],
  'finish-by-feel': ([wiped, brushed]) =>
    [
      { title: 'Wiped', coat: wiped!.value },
      { title: 'Brushed', coat: brushed!.h! },
    ].map(({ title, coat }) => ({
      drawn: <CoatsAndPaper title={title} coats={brushed!.n!} coat={coat} paper={PAPER} times={420} />,
      says: `${title}, three coats; drawn 420 times.`,
    })),
  'film-on-a-tongue': ([coated]) => [
    {
      drawn: <TongueSides title="Bare" play={coated!.p!} left={coated!.p!} times={120} />,
      says: 'Bare: all of its play. Drawn 120 times, a piece of the tongue left out.',
    },
    {
      drawn: <TongueSides title="Coated" play={coated!.p!} left={coated!.value} times={120} />,
      says: 'Three coats below and three above.',
    },
  ],
  'blend-by-parts': ([area, batch, first]) => [
    {
      drawn: <SixFaces title="Six faces" sides={[area!.L!, area!.b!, area!.H!]} />,
      says: (
        <>
          Outside <N of={area!.value} kind="area" digits={0} />, in pairs of faces.
        </>
      ),
    },
    {
      drawn: <Layers title="Two to one" batch={batch!.value} first={first!.value} />,
      says: (
        <>
          Three coats take <N of={batch!.value} kind="volume" digits={1} />, shared 2:1.
        </>
      ),
    },
  ],
};
