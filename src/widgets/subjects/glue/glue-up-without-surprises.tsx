/** Labs of the lesson on gluing up: the clock of one's own order, and the wait for the glue's water. */
import type { InputsOf } from '../../../box/core/field.ts';
import { count, number } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { waterGiven } from '../../../box/subjects/glue/results.ts';
import { glue } from '../../../box/subjects/glue/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import type { Values } from '../../../box/whole/index.ts';
import { glueUpTime } from '../../../calc/glue/glue-up.ts';
import { sunkenLine, waterAtLine } from '../../../calc/glue/water.ts';
import { rehearsalTime } from '../../../calc/joints/joint-fit.ts';
import { clockGiven, exampleOrder } from '../../../figures/glue/glue-clock.ts';
import { sinksAfter } from '../../../figures/glue/glue-line.ts';
import { OwnClock } from '../../../figures/glue/OwnClock.tsx';
import { SunkenCourse } from '../../../figures/glue/SunkenCourse.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { lab } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { glueUpGuesses } from './glue-up-without-surprises-guesses.tsx';

const order = {
  openTime: count('open time of the glue, minutes', {
    low: 2,
    high: 60,
    start: exampleOrder.openTime,
    help: 'From its label.',
  }),
  secondsFace: count('seconds to spread one face', { low: 1, high: 60, start: exampleOrder.secondsFace }),
  otherSteps: count('other steps of the order', { low: 1, high: 40, start: exampleOrder.otherSteps }),
  secondsStep: count('seconds for each of them', { low: 5, high: 120, start: exampleOrder.secondsStep }),
};
type Timed = Values & InputsOf<typeof order>;
const timed = rowsOf<Timed>();
const minutes = { kind: 'number', digits: 1, rule: 'dry-fit-in-half-the-open-time' } as const;
const Minutes = ({ of }: { of: number }) => <Quantity value={of} kind="number" digits={1} />;

const clock = lab({
  title: 'Your order against the clock',
  own: order,
  solve: (v) => ({
    trial: glueUpTime.compute(clockGiven(0, v)),
    minutes: glueUpTime.compute(clockGiven(v.facesToGlue, v)),
  }),
  figure: OwnClock,
  controls: ['secondsFace', 'fingerWidth', 'openTime'],
  more: ['otherSteps', 'secondsStep', 'headroom', 'joint'],
  results: [
    'facesToGlue',
    timed(glueUpTime, (v) => clockGiven(v.facesToGlue, v), { ...minutes, label: 'minutes for the glue-up' }),
    timed(rehearsalTime, (v) => ({ T_open: v.openTime }), { ...minutes, label: 'longest trial, minutes' }),
  ],
  says: (v) =>
    v.minutes <= v.openTime ? (
      <>
        It closes with <Minutes of={v.openTime - v.minutes} /> minutes to spare. The trial takes{' '}
        <Minutes of={v.trial} />.
      </>
    ) : (
      <>
        <Minutes of={v.minutes - v.openTime} /> minutes too long, though the trial took only{' '}
        <Minutes of={v.trial} />. Glue two corners first, take help, or a slower glue.
      </>
    ),
});

const wait = {
  daysWaited: number('days from gluing to leveling', 'days', {
    low: 1,
    high: 14,
    step: 0.5,
    digits: 1,
    start: 1,
  }),
};
type Waited = Values & InputsOf<typeof wait>;
const waited = rowsOf<Waited>();
const rule = 'wait-for-the-glue-water';
/** Less than what is printed of a small length, mm. */
const nothing = 0.005;

const sunkenCourse = lab({
  title: 'When the line lies still',
  own: wait,
  figure: SunkenCourse,
  controls: ['daysWaited', 'wall', 'species'],
  results: [
    waited(waterAtLine, (v) => waterGiven(v, v.daysWaited), {
      label: 'rise in moisture at the glue line',
      kind: 'points',
      digits: 2,
      rule,
    }),
    waited(
      sunkenLine,
      (v) => ({
        T: v.wall,
        C: v.tangentialCoefficient,
        dM: waterAtLine.compute(waterGiven(v, v.daysWaited)),
      }),
      { label: 'the line will sink on each face by', kind: 'length', as: 'fine', rule },
    ),
    'glueWaterWait',
  ],
  solve: (v) =>
    Number.isFinite(sinksAfter(v, v.daysWaited))
      ? {}
      : {
          refused:
            'The tables have no density for this wood, so how fast its water leaves is not known here.',
        },
  says: (v) => {
    const deep = sinksAfter(v, v.daysWaited);
    const after = <Quantity value={v.daysWaited} kind="days" digits={1} />;
    return deep < nothing ? (
      <>Leveled after {after}, next to nothing is left to sink.</>
    ) : (
      <>
        Leveled after {after}, the line will sink by about <Quantity value={deep} kind="length" as="fine" />{' '}
        on each face.
      </>
    );
  },
});

export const lesson = {
  labs: { clock, 'sunken-line': sunkenCourse },
  guesses: glueUpGuesses,
  model: modelOf(glue),
};
export default islandOf(lesson);
