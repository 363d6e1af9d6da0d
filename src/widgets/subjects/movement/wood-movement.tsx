/** Labs of the lesson on wood movement. */

import { lid } from '../../../box/subjects/lid/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { changeOf, methodSays } from '../../../box/subjects/movement/panel-state.ts';
import type { PanelName } from '../../../box/subjects/movement/results.ts';
import { movement } from '../../../box/subjects/movement/subject.ts';
import type { Values } from '../../../box/whole/index.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { GapSayings } from '../../../figures/movement/GapSayings.tsx';
import { LidSection, PanelSection } from '../../../figures/movement/PanelSection.tsx';
import { PanelYear } from '../../../figures/movement/PanelYear.tsx';
import { RingStrips } from '../../../figures/movement/RingStrips.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { woodMovementGuesses } from './wood-movement-guesses.tsx';

const Length = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;

/** What the year does to a panel, for its play on the dampest day and its hold on the driest. */
function fate(v: Values, part: PanelName) {
  const [damp, hold] =
    part === 'bottom' ? [v.bottomPlayDamp, v.bottomEngagementCrept] : [v.lidPlayDamp, v.lidEngagement];
  if (Number.isNaN(damp)) return `For the dampest day there is no number.`;
  if (damp < 0)
    return (
      <>
        On the dampest day the {part} wants <Length of={-damp} /> more than the grooves give: it jams.
      </>
    );
  if (hold < 0)
    return `It stays free, but on the driest day, pushed aside, the ${part} drops out of its groove.`;
  return (
    <>
      On the dampest day the {part} still has <Length of={damp} /> of play
      {Number.isFinite(hold) && (
        <>
          , and on the driest, pushed aside, <Length of={hold} /> of it stays in the groove
        </>
      )}
      .
    </>
  );
}

const panelSays = (part: PanelName) => (v: Values) => (
  <>
    {fate(v, part)} {methodSays(v, part)}
  </>
);

const labs: Record<string, LabSpec> = {
  strips: {
    title: 'Two strips go from dry to damp',
    figure: RingStrips,
    controls: ['ringAngle', 'species'],
    more: ['humidityDry', 'humidityDamp', 'temperature'],
    results: ['quarterSawnSaving', 'moistureDry', 'moistureDamp'],
    says: (v) => {
      const [flat, quarter] = [0, 90].map((angle) =>
        changeOf(v, v.bottomWidth, v.moistureDry, v.moistureDamp, angle),
      );
      if (!flat || !quarter || isRefused(flat) || isRefused(quarter))
        return isRefused(flat) ? flat.refused : '';
      return (
        <>
          From the driest to the dampest air the flat-sawn strip grows{' '}
          <Quantity value={flat.change / quarter.change} kind="ratio" digits={1} /> times as much as the
          quarter-sawn one. Found by the {flat.method} method. {flat.because}
        </>
      );
    },
  },
  year: {
    title: 'The gap beside the bottom through a year',
    figure: PanelYear,
    controls: ['bottomGap', 'humidityDamp', 'ringAngle'],
    more: ['humidityToday', 'humidityDry', 'temperature', 'grooveDepth', 'bottom'],
    results: ['bottomGapNeeded', 'bottomWidth', 'bottomSwelling', 'movementUp'],
    says: panelSays('bottom'),
  },
  section: {
    title: 'The bottom in its two grooves',
    figure: PanelSection,
    controls: ['humidityDry', 'grooveDepth', 'bottomGap'],
    more: ['humidityToday', 'humidityDamp', 'ringAngle', 'bottom'],
    results: ['bottomEngagement', 'bottomEngagementCrept', 'bottomShrinking'],
    says: (v) => fate(v, 'bottom'),
  },
  lid: {
    title: 'The lid in its two grooves',
    figure: LidSection,
    controls: ['lidPlay', 'ringAngle', 'humidityDamp'],
    more: ['humidityToday', 'humidityDry', 'lidGrooveDepth', 'lid'],
    results: ['lidPlayNeeded', 'lidWidth', 'lidPlayDry', 'lidEngagement'],
    says: panelSays('lid'),
  },
  sayings: {
    title: 'What the rules of thumb assume',
    figure: GapSayings,
    controls: ['species', 'humidityToday', 'humidityDamp'],
    more: ['ringAngle', 'temperature'],
    results: ['moistureToday', 'widestForSixteenth'],
    says: (v) =>
      Number.isFinite(v.widestForSixteenth) && v.widestForSixteenth > 0 ? (
        <>
          With 1/16 in (1.6 mm) off its width a panel of this wood and cut stays free up to{' '}
          <Quantity value={v.widestForSixteenth} kind="length" digits={0} denominator={8} round="down" />{' '}
          wide; from there on it no longer does.
        </>
      ) : (
        'With this air there is no limit to give: either the wood has no figure here, or it does not get damper than today.'
      ),
  },
};

export const lesson = { labs, guesses: woodMovementGuesses, model: modelOf(movement, lid) };
export default islandOf(lesson);
