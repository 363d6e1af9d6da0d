/**
 * Figures of the rules on wood, air and stock.
 * Over 150 lines: a table with one entry a rule, each a few lines that name its drawings.
 */
import { Bars, Dial, Glass } from '../../figures/rules/bars.tsx';
import { ProudCorner, RimStep } from '../../figures/rules/corners.tsx';
import { GrowingStrip } from '../../figures/rules/panels.tsx';
import { CuppedBoard, Disk, RingAngle } from '../../figures/rules/rings.tsx';
import { type FigureTable, N, type State, type Worked } from './figure-of.tsx';

/** Days by thickness, one bar each. */
const days =
  (title: string, says: string, pick: readonly number[]) =>
  (worked: readonly Worked[]): readonly State[] => [
    {
      drawn: (
        <Bars
          title={title}
          kind="days"
          digits={1}
          bars={pick.map((at) => ({ words: 'T', size: worked[at]!.T!, value: worked[at]!.value }))}
        />
      ),
      says,
    },
  ];

/** Two strips of one width that grow by different amounts. */
const strips =
  (rings: readonly [number, number], words: readonly [string, string]) =>
  (worked: readonly Worked[]): readonly State[] =>
    ([0, 1] as const).map((at) => ({
      drawn: (
        <GrowingStrip title={words[at]} width={worked[at]!.D!} growth={worked[at]!.value} rings={rings[at]} />
      ),
      says: words[at],
    }));

export const woodAndStock: FigureTable = {
  'ask-which-swing-a-saying-assumes': (worked) => [
    {
      drawn: (
        <Bars
          title="Swings that the same gap allows"
          kind="points"
          bars={[
            { words: 'cherry, W', size: worked[0]!.W!, value: worked[0]!.value },
            { words: 'red oak, W', size: worked[1]!.W!, value: worked[1]!.value },
            { words: 'cherry, W', size: worked[2]!.W!, value: worked[2]!.value },
          ]}
        />
      ),
      says: 'One gap each: how far the moisture of the wood may rise before it is used up.',
    },
  ],
  'build-in-the-middle': (worked) =>
    ([0, 1] as const).map((at) => ({
      drawn: (
        <GrowingStrip
          title={at === 0 ? 'Built in the middle' : 'Built at the driest'}
          width={worked[at]!.D!}
          growth={worked[at]!.value}
        />
      ),
      says:
        at === 0
          ? 'Built in the middle it swells by half of its swing. Growth drawn 15 times.'
          : 'Built at the driest it swells by all of it.',
    })),
  'heated-air-is-dry': (worked) => {
    const { p_out = 0, p_in = 0, h_out = 0 } = worked[0]!;
    const has = (p_out * h_out) / 100;
    return [
      {
        drawn: <Glass title="Outdoors" holds={p_out} has={has} most={p_in} air={5} />,
        says: 'Cold air holds little, and is nearly full.',
      },
      {
        drawn: <Glass title="Heated" holds={p_in} has={has} most={p_in} air={20} />,
        says: 'Heated, the same water fills a third.',
      },
    ];
  },
  'thin-parts-follow-the-year': days(
    'Half of the change',
    'Days to half of a change, open on both faces.',
    [0, 1],
  ),
  'write-the-humidity': (worked) =>
    worked.map(({ h = 0, value }) => ({
      drawn: <Dial title={`Air of ${h * 100} percent`} humidity={h * 100} moisture={value} />,
      says: (
        <>
          In air of <N of={h * 100} kind="percent" digits={0} /> wood comes to <N of={value} kind="percent" />
          .
        </>
      ),
    })),
  'bark-side-goes-hollow': ([far, near]) =>
    [far!, near!].map(({ w = 0, R = 0, value }) => ({
      drawn: <CuppedBoard title={`Pith ${R} mm below`} width={w} pith={R} cup={value} times={40} />,
      says: (
        <>
          R <N of={R} /> to the pith; the cup drawn 40 times.
        </>
      ),
    })),
  'cut-oversize-and-rest': (worked) => [
    {
      drawn: (
        <Bars
          title="What one board gives"
          kind="count"
          bars={worked.map(({ p = 0, value }) => ({ words: 'p', size: p, value }))}
        />
      ),
      says: 'Slices for walls from one board: what is left to plane off costs one of two.',
    },
  ],
  'flat-sawn-is-fine-for-walls': ([low, high]) =>
    [low!, high!].map(({ w = 0, R = 0, value }) => ({
      drawn: (
        <CuppedBoard title={`A wall ${w} mm high`} width={w} pith={R} cup={value} times={60} thickness={8} />
      ),
      says: (
        <>
          A wall <N of={w} /> high; the cup drawn 60 times.
        </>
      ),
    })),
  'grain-runs-around-the-box': ([step]) => [
    {
      drawn: <RimStep title="Walls alike" heights={[90, 90]} times={12} words={['alike', 'alike']} />,
      says: 'Rings alike: both walls move together.',
    },
    {
      drawn: (
        <RimStep
          title="Walls unlike"
          heights={[90 + step!.value, 90]}
          times={40}
          words={['flat-sawn', 'quarter-sawn']}
        />
      ),
      says: 'One flat-sawn, one quarter-sawn: the rim steps. Drawn 40 times.',
    },
  ],
  'heart-out': ([e]) => [
    { drawn: <Disk title="A whole disk, green" wedge={0} />, says: 'Green, its rings are closed.' },
    {
      drawn: <Disk title="The disk, dried" wedge={e!.value * 360} />,
      says: 'Dried, the rings are too short to close. True angle.',
    },
  ],
  'low-movement-wood-first': strips([0, 0], ['black cherry', 'American beech']),
  'one-thickness-all-round': ([e]) => [
    {
      drawn: <ProudCorner title="Walls alike" proud={0} wall={e!.t_c!} of="step" />,
      says: 'Both walls of one thickness: flush.',
    },
    {
      drawn: <ProudCorner title="One wall thinner" proud={e!.value} wall={e!.t_a!} of="step" times={10} />,
      says: 'One thinner: its corner stands proud. Drawn 10 times.',
    },
  ],
  'quarter-sawn-for-lids': strips(
    [0, 90],
    ['Flat-sawn; growth drawn 15 times.', 'Quarter-sawn, the same wood.'],
  ),
  'read-the-end-grain': ([e]) => [
    {
      drawn: <RingAngle title="Rings at 30 degrees" angle={e!.theta!} />,
      says: 'Rings at the border of flat and rift.',
    },
    { drawn: <RingAngle title="Rings upright" angle={90} />, says: 'Quarter-sawn: rings upright.' },
  ],
  'short-pieces-stay-joined': (worked) => [
    {
      drawn: (
        <Bars
          title="Walls that stay in one strip"
          kind="length"
          bars={worked.map(({ p = 0, value, k = 0 }) => ({
            words: `${value} walls`,
            value: value * p + (value - 1) * k,
          }))}
          limit={{ words: 's', value: worked[0]!.s! }}
        />
      ),
      says: 'So many walls stay in one strip that it is at least s long.',
    },
  ],
  'thickness-squared': days('Nine tenths of the change', 'Days to nine tenths of a change.', [1, 2]),
  'wait-until-it-stops-changing': ([arrived, not]) => [
    {
      drawn: (
        <Bars
          title="What two weighings differ by"
          kind="percent"
          digits={2}
          bars={[
            { words: 'has arrived', value: Math.abs(arrived!.value) },
            { words: 'not ready', value: Math.abs(not!.value) },
          ]}
          limit={{ words: 'limit', value: 0.3 }}
        />
      ),
      says: 'Loss between two weighings three days apart.',
    },
  ],
};
