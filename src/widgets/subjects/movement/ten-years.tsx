/** Labs of the lesson on the years after. */
import type { InputsOf } from '../../../box/core/field.ts';
import { choice, fine } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import type { MovementValues } from '../../../box/subjects/movement/results.ts';
import { movement } from '../../../box/subjects/movement/subject.ts';
import { panelPractice } from '../../../calc/movement/panel.ts';
import { offEachEdge } from '../../../calc/movement/repair.ts';
import { PlanedEdges } from '../../../figures/movement/PlanedEdges.tsx';
import { events, extremesAfter, otherHouse, TenYears } from '../../../figures/movement/TenYears.tsx';
import { type LabSpec, lab } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { Fine } from './august/lid-august.tsx';
import { moveHouse } from './move-house.tsx';
import { tenYearsGuesses } from './ten-years-guesses.tsx';

const ownPlay = {
  playNow: fine('play you find today, both sides', {
    low: -1,
    high: 3,
    start: 0.2,
    help: 'Groove to groove less the lid, measured dry. Below zero the lid is the wider one.',
  }),
};
type Jammed = MovementValues & InputsOf<typeof ownPlay>;
const needs = (v: Jammed) => ({
  W: v.lidWidth + v.lidPlayToday - v.playNow,
  C: v.movementUp,
  u: v.moistureDamp - v.moistureToday,
  c: panelPractice.lidAllowance,
  p: v.playNow,
});
const offRow = rowsOf<Jammed>()(offEachEdge, needs, {
  label: 'to plane off each edge; below zero nothing',
  kind: 'length',
  as: 'fine',
  rule: 'care',
});

const ownEvent = { event: choice('in the fourth year', events, 'nothing') };

const labs: Record<string, LabSpec> = {
  'plane-off': lab({
    title: 'How much to plane off, and when to stop',
    own: ownPlay,
    controls: ['playNow', 'humidityToday', 'ringAngle'],
    more: ['humidityDamp', 'species', 'wantedWidth', 'lidGrooveDepth'],
    figure: ({ values: v }) => (
      <PlanedEdges values={v} play={v.playNow} off={offEachEdge.compute(needs(v))} />
    ),
    results: [offRow, 'lidSwelling'],
    says: (v) => {
      const off = offEachEdge.compute(needs(v));
      if (Number.isNaN(off)) return 'The tables have no figure for this wood in this air.';
      return off > 0 ? (
        <>
          Take <Fine of={off} /> off each edge, and stop: it will then have{' '}
          <Fine of={panelPractice.lidAllowance} /> left on the dampest day.
        </>
      ) : (
        'It has play enough for the dampest day. If it sticks, look for a bow, grit or a film of finish.'
      );
    },
  }),
  'move-house': moveHouse,
  'ten-years': lab({
    title: 'Ten years of one lid',
    own: ownEvent,
    controls: ['event', 'ringAngle', 'lidPlay'],
    more: ['humidityDry', 'humidityDamp', 'humidityToday', 'lidGrooveDepth'],
    figure: ({ values: v }) => <TenYears values={v} event={v.event} />,
    results: ['lidPlayDamp', 'lidPlayDry'],
    says: (v) => {
      const { least, most } = extremesAfter(v, v.event);
      if (!Number.isFinite(least + most)) return 'The tables have no figure for this wood in this air.';
      const range =
        least < 0 ? (
          <>
            it lacks <Fine of={-least} /> in the damp and jams, and has <Fine of={most} /> of play in the dry
          </>
        ) : (
          <>
            its play goes from <Fine of={least} /> to <Fine of={most} />
          </>
        );
      return v.event === 'nothing' ? (
        <>Year after year {range}. The wood goes to and fro; it does not go on shrinking.</>
      ) : v.event === 'planed' ? (
        <>Planed in its dampest week to the play it has today, {range}, every year from then on.</>
      ) : (
        <>
          With air {otherHouse} % of humidity {v.event}, {range}.
        </>
      );
    },
  }),
};

export const lesson = { labs, guesses: tenYearsGuesses, model: modelOf(movement) };
export default islandOf(lesson);
