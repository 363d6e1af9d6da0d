/**
 * Figures of the rules on joints and grooves.
 * Over 150 lines: a table with one entry a rule, each a few lines that name its drawings.
 */
import { Bars } from '../../figures/rules/bars.tsx';
import { EndOutOfSquare, OpenMiter, ProudCorner, RimStep } from '../../figures/rules/corners.tsx';
import { AddedErrors, FingerCorner, FingerInSlot } from '../../figures/rules/fingers.tsx';
import { SlotFloor, TwoLines } from '../../figures/rules/slots.tsx';
import { FiveCutStrip, UnequalWalls } from '../../figures/rules/square.tsx';
import { KeyFromAbove, KeysInCorner, OneTail, TailRow } from '../../figures/rules/tails.tsx';
import { GrooveInWall } from '../../figures/rules/walls.tsx';
import { type FigureTable, N, type State } from './figure-of.tsx';

/** A corner with its height and its fingers. */
const corner = (title: string, high: number, finger: number, says: State['says'], more = {}): State => ({
  drawn: <FingerCorner title={title} high={high} finger={finger} {...more} />,
  says,
});

export const jointsAndGrooves: FigureTable = {
  'check-blade-and-fence': ([strip]) => [
    {
      drawn: <FiveCutStrip title="A square fence" first={strip!.B!} other={strip!.B!} times={20} />,
      says: 'A square fence cuts the fifth strip of one width.',
    },
    {
      drawn: <FiveCutStrip title="A fence that is off" first={strip!.A!} other={strip!.B!} times={20} />,
      says: (
        <>
          Off by <N of={strip!.value} kind="angle" digits={2} />, four times over. Drawn 20 times.
        </>
      ),
    },
  ],
  'clean-cuts': (examples) =>
    examples.slice(0, 2).map(({ k = 0, beta = 0, value }) => ({
      drawn: <SlotFloor title={beta > 0 ? 'Beveled teeth' : 'Flat-topped teeth'} wide={k} ridge={value} />,
      says: beta > 0 ? 'Teeth beveled in turn leave a ridge.' : 'Flat-topped teeth leave a flat floor.',
    })),
  'mark-the-mate-from-the-part': (examples) =>
    examples.slice(0, 2).map(({ value }, i) => ({
      drawn: <TwoLines title={i === 0 ? 'Both measured' : 'Marked from the part'} apart={value} times={80} />,
      says:
        i === 0
          ? 'Both lines measured: two errors. Drawn 80 times.'
          : 'Marked with a knife from the part. Drawn 80 times.',
    })),
  'dovetail-slope': (examples) =>
    ([6, 8] as const).map((slope, i) => ({
      drawn: (
        <OneTail
          title={`A slope of 1 in ${slope}`}
          wall={examples[i]!.t!}
          slope={slope}
          spread={examples[i]!.value}
        />
      ),
      says: 'How far it spreads on either side; dashed without.',
    })),
  'half-pins': ([, , e]) =>
    ([true, false] as const).map((halfPins) => ({
      drawn: (
        <TailRow
          title={halfPins ? 'Half pins at the edges' : 'Tails at the edges'}
          high={e!.H!}
          tails={e!.n!}
          pin={e!.p!}
          wall={e!.t!}
          slope={e!.s!}
          halfPins={halfPins}
        />
      ),
      says: halfPins
        ? 'Half a pin at each edge: every tail has two cheeks.'
        : 'Tails at the edges: one cheek each, and they can curl away.',
    })),
  'keys-and-splines': ([key, , spread]) => [
    {
      drawn: <KeyFromAbove title="A key from above" wall={key!.t!} depth={key!.d!} left={key!.value} />,
      says: (
        <>
          From above: w is left behind it, <N of={key!.value} />.
        </>
      ),
    },
    {
      drawn: (
        <KeysInCorner
          title="Three keys in a corner"
          high={spread!.H!}
          keys={spread!.N!}
          thick={3}
          leg={key!.d! * Math.SQRT2}
        />
      ),
      says: (
        <>
          From outside: one for each <N of={spread!.value} />.
        </>
      ),
    },
  ],
  'eight-cuts-of-a-miter': ([bad, good]) =>
    [bad!, good!].map(({ t = 0, e = 0, value }) => ({
      drawn: <OpenMiter title={`Off by ${e} degrees`} wall={t} gap={value} angle={e} times={8} />,
      says: `The last corner; its gap drawn 8 times.`,
    })),
  'finger-fit': ([play, swell]) => [
    {
      drawn: <FingerInSlot title="Dry" play={play!.value} times={80} of="play" />,
      says: 'Dry it slides home by hand. Play drawn 80 times.',
    },
    {
      drawn: <FingerInSlot title="Wet with glue" play={play!.value - swell!.value} times={80} of="left" />,
      says: 'The water of the glue takes most of it.',
    },
  ],
  'finger-width': ([wide, narrow]) => [
    corner(
      'Wide fingers',
      90,
      90 / wide!.n!,
      <>
        {wide!.n} fingers glue <N of={wide!.value} kind="area" />.
      </>,
    ),
    corner(
      'Narrow fingers',
      90,
      90 / narrow!.n!,
      <>
        {narrow!.n} glue <N of={narrow!.value} kind="area" />, and take twice the cuts.
      </>,
    ),
  ],
  'fingers-proud-or-flush': ([e]) => [
    {
      drawn: <ProudCorner title="Flush" proud={0} wall={e!.t!} of="e" />,
      says: 'Flush: slots as deep as the wall.',
    },
    {
      drawn: <ProudCorner title="Proud" proud={e!.e!} wall={e!.t!} of="e" />,
      says: 'Proud by e, trimmed after gluing. Drawn 4 times.',
    },
  ],
  'first-end-square-before-the-second': ([some, more]) =>
    [some!, more!].map(({ w = 0, e = 0, value }) => ({
      drawn: <EndOutOfSquare title={`Off by ${e} degrees`} high={w} off={value} angle={e} times={40} />,
      says: `Over the height of a wall; drawn 40 times.`,
    })),
  'front-ends-with-a-finger': ([, hole, whole]) => [
    corner(
      'The front ends within its own finger',
      hole!.H!,
      hole!.f!,
      'It ends within its own finger: a hole.',
      {
        front: hole!.h,
      },
    ),
    corner('The front ends with a finger', whole!.H!, whole!.f!, 'It ends where a finger ends: none.', {
      front: whole!.h,
    }),
  ],
  'long-grain-to-long-grain': ([fingers, miter, butt]) => [
    {
      drawn: (
        <Bars
          title="Glue area of a corner"
          kind="area"
          bars={[
            { words: 'fingers: long grain', value: fingers!.value },
            { words: 'miter: slanted end', value: miter!.value },
            { words: 'butt: end grain', value: butt!.value },
          ]}
        />
      ),
      says: 'Only the first is long grain on long grain, whatever the others measure.',
    },
  ],
  'no-sliver-at-the-edge': ([, e]) => [
    corner(
      'Part of a finger is left',
      e!.H!,
      e!.f!,
      <>
        <N of={e!.value} /> are left over.
      </>,
    ),
    corner('Trimmed to whole fingers', e!.H! - e!.value, e!.f!, 'Trimmed by that, the last finger is whole.'),
  ],
  'odd-finger-count': () => [
    corner('Six fingers', 54, 9, 'Even: the edges differ, and a front is not its back.'),
    corner('Five fingers', 45, 9, 'Odd: both edges alike, and any wall fits either way.'),
  ],
  'opposite-walls-from-one-stop': ([e]) => [
    {
      drawn: <UnequalWalls title="Two marks" apart={e!.value} times={80} />,
      says: 'Cut to two marks: they share no error. Drawn 80 times.',
    },
    {
      drawn: <UnequalWalls title="One stop" apart={0} times={80} />,
      says: 'Cut against one stop: the same error.',
    },
  ],
  'step-error-adds-up': ([bad]) => {
    const errors = Array.from({ length: bad!.i! + 1 }, (_, i) => i * bad!.delta!);
    return [
      {
        drawn: <AddedErrors title="Cut apart" errors={errors} times={80} from="from the fence" />,
        says: 'Against a wall that was cut right: each step adds its error. Drawn 80 times.',
      },
      {
        drawn: <AddedErrors title="Cut together" errors={errors.map(() => 0)} times={80} from="both alike" />,
        says: 'Against a wall cut on the same setting: both are off alike, and it closes.',
      },
    ];
  },
  'turn-the-part-round': ([count, far, turned]) => {
    const { delta = 0 } = far!;
    const steps = Array.from({ length: count!.value + 1 }, (_, i) => i);
    return [
      {
        drawn: (
          <AddedErrors
            title="From one edge"
            errors={steps.map((i) => i * delta)}
            times={180}
            from="one edge"
          />
        ),
        says: 'All from one edge: the error grows to the other. Drawn 180 times.',
      },
      {
        drawn: (
          <AddedErrors
            title="From both edges"
            errors={steps.map((i) => Math.min(i, steps.length - 1 - i, turned!.i!) * delta)}
            times={180}
            from="both edges"
          />
        ),
        says: 'Half from each edge: it stays small, and lies in the middle.',
      },
    ];
  },
  'groove-depth': ([, , third, half]) =>
    [third!, half!].map(({ w = 0, t = 0, value }) => ({
      drawn: (
        <GrooveInWall
          title={`A web of ${w} in ${t} mm`}
          wall={t}
          depth={t - w}
          slot={t * 0.42}
          lip={t * 0.36}
          of={{ depth: 'g', web: 'w', wall: 't' }}
        />
      ),
      says: (
        <>
          The web keeps <N of={value} kind="percent" digits={0} /> of the strength.
        </>
      ),
    })),
  'groove-inside-one-finger': ([fits, runs]) => [
    corner('Inside one finger', 45, fits!.f!, 'Inside one finger: a hole in one pair of walls only.', {
      groove: [fits!.m!, fits!.b!],
    }),
    corner('Into the next finger', 40, runs!.f!, 'Into the next finger: a hole in both pairs.', {
      groove: [runs!.m!, runs!.b!],
    }),
  ],
  'groove-order': ([e]) => [
    {
      drawn: (
        <RimStep
          title="Grooves from the upper edge"
          heights={[e!.h_1!, e!.h_2!]}
          times={16}
          groove={40}
          words={['h₁', 'h₂'].map((word) => word.replace('₁', '1').replace('₂', '2')) as [string, string]}
        />
      ),
      says: 'Both grooved from the upper edge: they do not meet. Drawn 16 times.',
    },
    {
      drawn: (
        <RimStep
          title="Walls of one height"
          heights={[e!.h_2!, e!.h_2!]}
          times={16}
          groove={40}
          words={['h2', 'h2']}
        />
      ),
      says: 'One height, one edge, one setting: the groove runs round.',
    },
  ],
  'groove-width-from-the-panel': ([e]) => [
    {
      drawn: <FingerInSlot title="No room" play={0} times={40} of="s" />,
      says: 'As wide as the panel: glue and damp close it.',
    },
    {
      drawn: <FingerInSlot title="A little room" play={e!.s!} times={40} of="s" />,
      says: 'A little wider: it drops in. Drawn 40 times.',
    },
  ],
  'lip-below-bottom-groove': ([, , e]) => [
    {
      drawn: (
        <GrooveInWall
          title="A lip as thick as the groove is deep"
          wall={9.5}
          depth={e!.d!}
          slot={4}
          lip={e!.m!}
          of={{ lip: 'm', depth: 'd' }}
          push="q"
        />
      ),
      says: 'Drawn upside down: the strip that carries the bottom.',
    },
    {
      drawn: (
        <GrooveInWall
          title="A thin lip"
          wall={9.5}
          depth={e!.d!}
          slot={4}
          lip={e!.m! / 2}
          of={{ lip: 'm', depth: 'd' }}
          push="q"
          splits
        />
      ),
      says: 'Half as thick it takes a quarter, and splits along the grain.',
    },
  ],
  'lip-beside-lid-groove': ([thick, thin]) =>
    [thick!, thin!].map(({ m = 0, d = 0, value }, i) => ({
      drawn: (
        <GrooveInWall
          title={i === 0 ? 'A lip as thick as the groove is deep' : 'A lip half as thick'}
          wall={9.5}
          depth={d}
          slot={4.2}
          lip={m}
          of={{ lip: 'm', depth: 'd' }}
          push="q"
          splits={i === 1}
        />
      ),
      says: (
        <>
          Breaks at <N of={value} kind="lineLoad" />.
        </>
      ),
    })),
};
