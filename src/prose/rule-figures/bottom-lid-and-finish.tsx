/**
 * Figures of the rules on bottom, lid, glue-up and finish.
 * Over 150 lines: a table with one entry a rule, each a few lines that name its drawings.
 */
import { bottomSagBound } from '../../calc/bottom/bottom.ts';
import { Bars } from '../../figures/rules/bars.tsx';
import { GrainOfLid, LidLine, LidPulledOff, NotchCut } from '../../figures/rules/lids.tsx';
import { HingeEdges, LinerRoom, SawnOff } from '../../figures/rules/lids-apart.tsx';
import { EdgeInGroove, GluedAcross, GrowingStrip } from '../../figures/rules/panels.tsx';
import { ShutBox } from '../../figures/rules/plans.tsx';
import { BowedLid } from '../../figures/rules/rings.tsx';
import { OnPlate, Racked } from '../../figures/rules/square.tsx';
import { Bent } from '../../figures/rules/walls.tsx';
import { type FigureTable, N, type State, type Worked } from './figure-of.tsx';

const bows = (worked: readonly Worked[]): readonly State[] =>
  worked.map(({ w = 0, T = 0, value }) => ({
    drawn: (
      <BowedLid
        title={`A lid ${w} mm wide and ${T} mm thick`}
        width={w}
        thickness={T}
        cup={value}
        times={10}
      />
    ),
    says: (
      <>
        One point drier above, <N of={w} /> wide; drawn 10 times.
      </>
    ),
  }));

export const bottomLidAndFinish: FigureTable = {
  'bottom-thickness': ([, e]) => {
    const { F = 0, a = 0, b = 0, E = 0, h = 0, value } = e!;
    const half = bottomSagBound.compute({ F, a, b, E, h: 2 * h });
    const bottom = { length: a, times: 20, load: 'F', thick: 'h' };
    return [
      {
        drawn: <Bent {...bottom} title="A thin bottom" thickness={h} gives={value} />,
        says: 'At most so far under its load; drawn 20 times.',
      },
      {
        drawn: <Bent {...bottom} title="A bottom twice as thick" thickness={2 * h} gives={half} />,
        says: 'Twice as thick it sags an eighth.',
      },
    ];
  },
  'gap-beside-the-bottom': ([gap, , crept]) => [
    {
      drawn: <EdgeInGroove title="Held central" depth={crept!.g!} play={gap!.value} of="gap" held />,
      says: 'On the day it is fitted, held central: half of all its play.',
    },
    {
      drawn: (
        <EdgeInGroove
          title="Driest day, crept aside"
          depth={crept!.g!}
          play={crept!.g! - crept!.value}
          of="gap"
          held
        />
      ),
      says: (
        <>
          Driest day, crept to the other side: <N of={crept!.value} as="exact" /> still held.
        </>
      ),
    },
  ],
  'solid-floats-plywood-may-be-glued': ([solid, , plywood]) =>
    [solid!, plywood!].map(({ D = 0, value }, i) => ({
      drawn: <GrowingStrip title={i === 0 ? 'Solid wood' : 'Plywood'} width={D} growth={value} times={10} />,
      says: i === 0 ? 'Solid wood, over 4 points; drawn 10 times.' : 'Plywood of the same width.',
    })),
  'thicker-bottom-sounds-quieter': ([, thin, thick]) => [
    {
      drawn: (
        <Bars
          title="Lowest note"
          kind="number"
          digits={0}
          bars={[thin!, thick!].map(({ h = 0, value }) => ({ words: 'h', size: h, value }))}
        />
      ),
      says: 'Hertz (vibrations a second): twice as thick, twice as fast, an octave higher.',
    },
  ],
  'cup-from-unequal-faces': bows,
  'lid-clearance': ([quarter, flat]) => [
    {
      drawn: <EdgeInGroove title="Quarter-sawn" depth={4} play={quarter!.value} />,
      says: 'Quarter-sawn, pushed to the far side: all its play shows here.',
    },
    {
      drawn: <EdgeInGroove title="Flat-sawn" depth={4} play={flat!.value} />,
      says: 'Flat-sawn it needs more.',
    },
  ],
  'lid-engagement': ([dry, quarter]) => [
    {
      drawn: <EdgeInGroove title="Today" depth={quarter!.value} play={dry!.p!} held />,
      says: 'Today, pushed to the far side.',
    },
    {
      drawn: <EdgeInGroove title="The driest day" depth={quarter!.value} play={dry!.value} held />,
      says: (
        <>
          On the driest day the groove must still hold <N of={quarter!.E_d!} />.
        </>
      ),
    },
  ],
  hinges: ([shallow, deep]) => [
    {
      drawn: <HingeEdges title="A little too shallow" tooDeep={-shallow!.value} knuckle={shallow!.k!} />,
      says: (
        <>
          A little too shallow: a gap of <N of={shallow!.value} as="exact" />.
        </>
      ),
    },
    {
      drawn: <HingeEdges title="A little too deep" tooDeep={deep!.o!} knuckle={2 * deep!.a!} />,
      says: 'As much too deep: the lid turns on its edge, and the front stands open.',
    },
  ],
  'lift-off-fit': ([three, wiped]) =>
    [three!, wiped!].map(({ value }) => ({
      drawn: <LinerRoom title="Finish in the room of a liner" room={0.3} film={value} />,
      says: (
        <>
          <N of={value} as="exact" /> of film in <N of={0.3} as="exact" /> of room.
        </>
      ),
    })),
  'sawn-off-lid': ([mm]) =>
    [0.4, 1.5].map((web) => ({
      drawn: <SawnOff title={`A web of ${web} mm`} wall={8} web={web} kerf={mm!.k!} />,
      says: (
        <>
          A web of <N of={web} as="exact" /> in a wall of <N of={8} />.
        </>
      ),
    })),
  'lid-grain-along-its-travel': ([along, across]) => [
    {
      drawn: (
        <GrainOfLid title="Grain along its way" along grows={along!.value} width={along!.D!} times={10} />
      ),
      says: 'Along its way: it grows between its grooves; drawn 10 times.',
    },
    {
      drawn: <GrainOfLid title="Grain across its way" grows={across!.value} width={across!.L!} times={10} />,
      says: 'Across: hardly, but its end grain runs in the grooves.',
    },
  ],
  'lid-line': ([usual, half]) =>
    [usual!, half!].map(({ h = 0, H = 0, value }) => ({
      drawn: <LidLine title={`A lid of ${h} mm on a box of ${H} mm`} lid={h} height={H} />,
      says: value < 0.4 ? 'Between a quarter and a third.' : 'Half: a second box on the first.',
    })),
  'long-lids-run-short-ones-jam': ([bare]) => {
    const { W = 0, value } = bare!;
    return [
      {
        drawn: <LidPulledOff title="A long lid" width={W} held={value * 1.2} off={W / 2} jams={false} />,
        says: (
          <>
            Pulled at its edge it runs while more than <N of={value} /> is held.
          </>
        ),
      },
      {
        drawn: <LidPulledOff title="A short lid" width={W} held={value * 0.7} off={W / 2} jams />,
        says: 'With less it twists and jams.',
      },
    ];
  },
  'never-glue-across-the-grain': ([four, six]) =>
    [four!, six!].map(({ D = 0, value, M_i = 0, M_f = 0 }) => ({
      drawn: <GrowingStrip title={`${M_f - M_i} points`} width={D * 0.66} growth={value} times={10} />,
      says: `Over ${M_f - M_i} points. The wall below does not follow.`,
    })),
  'pull-in-the-middle': ([jam, drag]) => [
    {
      drawn: (
        <LidPulledOff
          title="Off the middle, held long"
          width={100}
          held={drag!.L! * 0.7}
          off={drag!.e!}
          jams={false}
        />
      ),
      says: 'Held long, it runs, though with more drag.',
    },
    {
      drawn: (
        <LidPulledOff title="Off the middle, held short" width={100} held={jam!.value} off={jam!.e!} jams />
      ),
      says: (
        <>
          With <N of={jam!.value} /> or less held it jams.
        </>
      ),
    },
  ],
  'season-to-build-in': ([dry, damp]) => [
    {
      drawn: <EdgeInGroove title="Fitted in the driest week" depth={4} play={dry!.value} />,
      says: 'Fitted in the driest week: room for the whole swing.',
    },
    {
      drawn: <EdgeInGroove title="Fitted in the dampest week" depth={4} play={damp!.value} />,
      says: 'In the dampest: just enough to run.',
    },
  ],
  'thumb-notch': ([thick, thin]) =>
    [thick!, thin!].map(({ T = 0, value }) => ({
      drawn: <NotchCut title={`A notch in a lid of ${T} mm`} thick={T} depth={value} />,
      says:
        T === thick!.T ? (
          <>
            <N of={T} /> thick: room for a notch of <N of={value} />.
          </>
        ) : (
          <>
            <N of={T} /> thick: <N of={value} />, too little.
          </>
        ),
    })),
  'short-when-glued-across-the-grain': ([long, short]) =>
    [long!, short!].map(({ D = 0, value }) => ({
      drawn: <GluedAcross title={`A strip ${D} mm long`} width={100} glued={D} differ={value} />,
      says: D === long!.D ? 'Lid from above; growth drawn 10 times.' : 'A short strip: they hardly differ.',
    })),
  diagonals: ([, e]) => {
    const { a = 0, b = 0, value } = e!;
    return [
      {
        drawn: <Racked title="Equal diagonals" a={a} b={b * 0.62} shift={0} times={1} />,
        says: 'Equal diagonals: square.',
      },
      {
        drawn: <Racked title="Unequal diagonals" a={a} b={b * 0.62} shift={value} times={20} />,
        says: 'Unequal: it leans. Squeeze the longer one. Drawn 20 times.',
      },
    ];
  },
  'dry-fit-in-half-the-open-time': ([e]) => [
    {
      drawn: (
        <Bars
          title="Minutes"
          kind="number"
          digits={0}
          bars={[
            { words: 'glue stays open, min', value: e!.T_open! },
            { words: 'the trial, min', value: e!.value },
          ]}
        />
      ),
      says: 'The trial takes half of what the glue gives you.',
    },
  ],
  twist: ([e]) => {
    const { h = 0, b = 0, value } = e!;
    return [
      {
        drawn: <OnPlate title="Flat" rock={0} width={b} times={1} />,
        says: 'Flat: all four corners touch the plate.',
      },
      {
        drawn: <OnPlate title="Twisted" rock={h} width={b} times={60} />,
        says: (
          <>
            The far end is turned by <N of={value} kind="angle" digits={2} />; drawn 60 times.
          </>
        ),
      },
    ];
  },
  'both-faces-or-cup-for-days': bows,
  'finish-slows-does-not-stop': ([, thin, thick]) => [
    {
      drawn: (
        <Bars
          title="Of the yearly swing a finished part keeps"
          kind="percent"
          digits={0}
          bars={[thin!, thick!].map(({ T = 0, value }) => ({ words: 'T', size: T, value }))}
        />
      ),
      says: 'Share of the yearly swing that stays, under three coats of varnish.',
    },
  ],
  'nothing-oily-inside': ([e]) => [
    {
      drawn: <ShutBox title="A shut box" inside={e!.V!} />,
      says: (
        <>
          The air shut in it hardens about <N of={e!.value} kind="mass" digits={2} /> of oil, and then no
          more.
        </>
      ),
    },
  ],
  care: ([kept, left]) =>
    [kept!, left!].map(({ D = 0, value }, i) => ({
      drawn: (
        <GrowingStrip
          title={i === 0 ? 'Air kept even' : 'A heated house'}
          width={D}
          growth={value}
          times={10}
        />
      ),
      says:
        i === 0 ? 'Kept between 40 and 55 %: its year, drawn 10 times.' : 'From 30 to 60 %, twice as much.',
    })),
  'before-you-move-house': ([after, , crept]) => [
    {
      drawn: <EdgeInGroove title="Before the move" depth={crept!.g!} play={after!.p!} held />,
      says: 'Before, crept to the other side.',
    },
    {
      drawn: <EdgeInGroove title="After the move" depth={crept!.g!} play={after!.value} />,
      says: (
        <>
          In the drier house <N of={crept!.value} as="exact" /> are still held.
        </>
      ),
    },
  ],
  'rattles-are-cured-in-thickness': ([, thick, wide]) => [
    {
      drawn: (
        <Bars
          title="What a lid moves by in a year"
          kind="length"
          digits={2}
          bars={[
            { words: 'width W', size: wide!.D!, value: wide!.value },
            { words: 'thickness T', size: thick!.T!, value: thick!.value },
          ]}
        />
      ),
      says: 'A flat-sawn lid over 4 points of moisture: its width, and its thickness.',
    },
  ],
  'no-finish-on-running-surfaces': ([coats]) => [
    {
      drawn: <EdgeInGroove title="Bare" depth={4} play={0.5} of="" />,
      says: 'Bare and waxed: all its play is left.',
    },
    {
      drawn: <EdgeInGroove title="Coated" depth={4} play={0.5} of="" film={coats!.value / 2} />,
      says: (
        <>
          Three coats on both faces take <N of={coats!.value} as="exact" /> of its room in the slot.
        </>
      ),
    },
  ],
};
