/** Guesses of the lesson on gluing up. */
import type { Box } from '../../../box/subjects/inputs.ts';
import { ClockGuess, clockFrame, minutesRange } from '../../../figures/glue/ClockGuess.tsx';
import { CubeGuess, cubeFrame, cubeRange } from '../../../figures/glue/CubeGuess.tsx';
import { ForceGuess, forceFrame, forceRange, miterForce } from '../../../figures/glue/ForceGuess.tsx';
import { exampleOrder, glueUpMinutes } from '../../../figures/glue/glue-clock.ts';
import { LinePick, lineOption, WetLine } from '../../../figures/glue/LinePick.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH, type UnitSystem } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

/** A corner so many fingers high, each so wide; the walls by themselves. */
const corner = (
  system: UnitSystem,
  mm: [number, number, number],
  inch: [number, number, number],
): Partial<Box> => {
  const [fingers, finger, wall] =
    system === 'mm' ? mm : (inch.map((n, i) => (i ? n * INCH : n)) as typeof inch);
  return { sizeFrom: 'outside', joint: 'finger', wantedHeight: fingers * finger, fingerWidth: finger, wall };
};
const Minutes = ({ of }: { of: number }) => <Quantity value={of} kind="number" digits={1} />;

export const glueUpGuesses: Readonly<Record<string, GuessSpec>> = {
  'last-clamp': {
    type: 'number',
    label: 'minutes until the last clamp',
    event: 'Start the clock',
    field: { kind: 'number', step: 0.5, digits: 1, ...minutesRange },
    pins: (system) => corner(system, [15, 6, 9], [15, 1 / 4, 3 / 8]),
    figure: ClockGuess,
    frame: clockFrame,
    start: () => 0,
    truth: glueUpMinutes,
    controls: ['fingerWidth'],
    answer: (v) => (
      <>
        <Minutes of={glueUpMinutes(v)} /> minutes: {v.facesToGlue} faces are spread before the first corner
        closes
        {glueUpMinutes(v) > exampleOrder.openTime
          ? ', and the glue has skinned over.'
          : '. The glue is still open.'}
      </>
    ),
  },
  'glue-cube': {
    type: 'number',
    label: 'edge of the cube',
    event: 'Pour it out',
    field: { kind: 'length', step: 0.5, inchStep: INCH / 32, digits: 1, ...cubeRange },
    pins: (system) => corner(system, [7, 8, 8], [7, 5 / 16, 5 / 16]),
    figure: CubeGuess,
    frame: cubeFrame,
    start: () => 0,
    truth: (v) => v.glueCube,
    controls: ['fingerWidth'],
    answer: (v) => (
      <>
        A cube of <Quantity value={v.glueCube} kind="length" />
        {Math.abs(v.glueCube / v.wall - 1) < 0.15 && ', about as thick as a wall'}. More of it only runs out.
      </>
    ),
  },
  'miter-force': {
    type: 'number',
    label: 'force on this corner',
    event: 'Look it up',
    field: { kind: 'force', step: 10, digits: 0, ...forceRange },
    pins: (system) =>
      system === 'mm'
        ? { sizeFrom: 'outside', joint: 'mitre', wantedHeight: 90, wall: 10 }
        : { sizeFrom: 'outside', joint: 'mitre', wantedHeight: 3.5 * INCH, wall: (3 / 8) * INCH },
    figure: ForceGuess,
    frame: forceFrame,
    start: () => 0,
    truth: miterForce,
    controls: ['wall'],
    answer: (v) => (
      <>
        <Quantity value={miterForce(v)} kind="force" digits={0} />, by the guide. No tape and no strap gives
        that, and they hold.
      </>
    ),
  },
  'leveled-next-day': {
    type: 'pick',
    label: 'A month later the face is',
    event: 'Let it dry',
    pins: (system) => corner(system, [7, 8, 8], [7, 5 / 16, 5 / 16]),
    figure: WetLine,
    options: {
      sunken: 'sunken along the line',
      level: 'level, as it was planed',
      ridge: 'raised along the line',
    },
    option: LinePick,
    truth: lineOption,
    controls: ['wall'],
    answer: (v) => (
      <>
        Sunken, by <Quantity value={v.sunkNextDay} kind="length" as="fine" />: what stood up with water was
        planed off, and is missing when the water has gone.
      </>
    ),
  },
};
