/**
 * Figures of the rules on contents, size and proportion, and on walls.
 * Over 150 lines: a table with one entry a rule, each a few lines that name its drawings.
 */

import { insideFromOutside } from '../../calc/size/sizes.ts';
import { Front, Plan } from '../../figures/rules/plans.tsx';
import { Bent } from '../../figures/rules/walls.tsx';
import { type FigureTable, N } from './figure-of.tsx';

export const sizeAndShape: FigureTable = {
  'design-from-the-inside': ([e]) => {
    const [c, r] = [e!.c!, e!.r!];
    const box = { wall: 8, width: 112, fill: 176, outside: 'L' };
    return [
      {
        drawn: (
          <Plan {...box} title="No room beside the contents" length={c + 16} contents={[c, 96]} word="c" />
        ),
        says: 'Cut to the contents, they go in once, and no finger gets them out.',
      },
      {
        drawn: (
          <Plan
            {...box}
            title="Room on each side"
            length={e!.value + 16}
            contents={[c, 96 - 2 * r]}
            word="c"
          />
        ),
        says: (
          <>
            <N of={r} /> on each side: inside <N of={e!.value} />.
          </>
        ),
      },
    ];
  },
  'linings-and-dividers-first': ([cell, room]) => {
    const { f = 0, n = 0, d = 0 } = room!;
    const box = { length: room!.value + 16, width: 104, wall: 8 };
    return [
      {
        drawn: <Plan {...box} title="Without lining and dividers" inside="l" />,
        says: (
          <>
            The bare inside is <N of={room!.value} /> long.
          </>
        ),
      },
      {
        drawn: <Plan {...box} title="With lining and dividers" lining={f} dividers={[n, d]} />,
        says: (
          <>
            A lining of <N of={f} /> and {n} dividers of <N of={d} /> leave <N of={cell!.value} /> each.
          </>
        ),
      },
    ];
  },
  'outside-is-inside-plus-two-walls': ([e]) => {
    const { l = 0, t = 0, value } = e!;
    const box = { width: 120, fill: l + 4 * t, inside: 'l' };
    return [
      {
        drawn: <Plan {...box} title="The inside alone" length={l + t} wall={t / 2} />,
        says: (
          <>
            The same inside with walls of <N of={t / 2} />.
          </>
        ),
      },
      {
        drawn: <Plan {...box} title="Inside and two walls" length={value} wall={t} />,
        says: (
          <>
            With walls of <N of={t} /> the outside grows by two of them, to <N of={value} />.
          </>
        ),
      },
    ];
  },
  'walls-cost-inside-volume': ([e]) => {
    const { L = 0, t = 0, value } = e!;
    return [
      {
        drawn: <Plan title="Thin walls" length={L} width={100} wall={t / 3} inside="l" />,
        says: (
          <>
            Walls a third as thick leave <N of={insideFromOutside.compute({ L, t: t / 3 })} /> inside.
          </>
        ),
      },
      {
        drawn: <Plan title="Thick walls" length={L} width={100} wall={t} inside="l" />,
        says: (
          <>
            Walls of <N of={t} /> leave <N of={value} /> of the same outside.
          </>
        ),
      },
    ];
  },
  'simple-ratio': ([e]) => {
    const { W = 0, value } = e!;
    return [
      {
        drawn: <Plan title="Three to two" length={W * value} width={W} wall={8} fill={W * 1.8} word="3:2" />,
        says: 'The short end of the usual range, 1.5.',
      },
      {
        drawn: <Plan title="Nine to five" length={W * 1.8} width={W} wall={8} fill={W * 1.8} word="9:5" />,
        says: 'The long end, 1.8. Between them most boxes lie.',
      },
    ];
  },
  'height-from-width': ([third]) => {
    const { W = 0, value } = third!;
    return [
      {
        drawn: <Front title="A third of the width high" high={value} wide={W} word="1/3" />,
        says: (
          <>
            <N of={value} /> high on <N of={W} />.
          </>
        ),
      },
      {
        drawn: <Front title="Half of the width high" high={W / 2} wide={W} word="1/2" />,
        says: (
          <>
            <N of={W / 2} /> high: the upper end of the usual range.
          </>
        ),
      },
    ];
  },
  'inside-and-outside-differ': ([e]) => {
    const { L = 0, W = 0, t = 0, value } = e!;
    return [
      {
        drawn: <Plan title="Thin walls" length={L} width={W} wall={t / 4} word={(L / W).toFixed(2)} />,
        says: `With next to no walls the inside has the ratio of the outside.`,
      },
      {
        drawn: <Plan title="Thicker walls" length={L} width={W} wall={t} word={String(value)} />,
        says: (
          <>
            With walls of <N of={t} /> the inside is {value} times as long as wide.
          </>
        ),
      },
    ];
  },
  'wall-thickness': ([, , thin, thick]) =>
    [thin!, thick!].map(({ L = 0, t = 0, value }) => ({
      drawn: (
        <Bent
          title={`A side ${t} mm thick, pushed`}
          length={L}
          thickness={t}
          gives={value}
          times={60}
          load="P"
          thick="t"
        />
      ),
      says:
        t === thin!.t
          ? 'From above, pushed in the middle; drawn 60 times.'
          : 'The same push on a thicker side.',
    })),
};
