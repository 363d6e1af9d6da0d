/** Labs of the lesson on groove margins. */

import { grooves } from '../../../box/subjects/grooves/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import type { Values } from '../../../box/whole/index.ts';
import { isSlender } from '../../../calc/grooves/grooves.ts';
import { LipAndWeb } from '../../../figures/grooves/LipAndWeb.tsx';
import { LoadsOnLip } from '../../../figures/grooves/LoadsOnLip.tsx';
import { WebLeft } from '../../../figures/grooves/WebLeft.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { LabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { grooveMarginsGuesses } from './groove-margins-guesses.tsx';

const Newtons = ({ value }: { value: number }) => <Quantity value={value} kind="force" digits={0} />;

const unknown = 'The tables have no strength across the grain for this wood.';

/** What a push does to the two lips, in words. */
function afterPush(v: Values) {
  if (Number.isNaN(v.tensionPerpendicular)) return unknown;
  const push = <Newtons value={v.push} />;
  const [lid, bottom] = [<Newtons value={v.lidLipPush} />, <Newtons value={v.bottomLipPush} />];
  const splits = [v.lidLipPush < v.push, v.bottomLipPush < v.push];
  const stubby = !isSlender(v.lidLip, v.lidGrooveDepth) || !isSlender(v.bottomLip, v.grooveDepth);
  return (
    <>
      {!splits.includes(true) ? (
        <>
          Both lips take a push of {push}: {lid} at the lid, {bottom} at the bottom.
        </>
      ) : !splits.includes(false) ? (
        <>
          A push of {push} splits off either lip: they take {lid} at the lid, {bottom} at the bottom.
        </>
      ) : (
        <>
          A push of {push} splits off the lip at the {splits[0] ? 'lid' : 'bottom'}, which takes{' '}
          {splits[0] ? lid : bottom}; the other takes {splits[0] ? bottom : lid}.
        </>
      )}
      {stubby && ' A lip thicker than twice its groove’s depth is counted as no thicker than that.'}
    </>
  );
}

const labs: Record<string, LabSpec> = {
  lips: {
    title: 'What a lip takes',
    figure: LipAndWeb,
    controls: ['lidLip', 'bottomLip', 'push'],
    more: ['lidGrooveDepth', 'grooveDepth', 'wall', 'species'],
    results: ['lidLipLoad', 'lidLipPush', 'bottomLipPush'],
    says: afterPush,
  },
  loads: {
    title: 'What presses on the lip',
    figure: LoadsOnLip,
    controls: ['bottomLip', 'push'],
    more: ['grooveDepth', 'contentsLength', 'contentsWidth', 'species'],
    results: ['contentsLoad', 'dropLoad', 'bottomLipLoad'],
    says: (v) =>
      Number.isNaN(v.bottomLipLoad) ? (
        unknown
      ) : (
        <>
          This lip takes <Quantity value={v.bottomLipLoad / v.contentsLoad} kind="count" digits={0} /> times
          what 1 kg (2.2 lb) of contents puts on it at rest, and{' '}
          {v.bottomLipLoad > v.dropLoad ? 'outlasts' : 'splits in'} a fall of half a meter (20 in).
        </>
      ),
  },
  web: {
    title: 'What is left behind the groove',
    figure: WebLeft,
    controls: ['grooveDepth', 'wall'],
    more: ['lidGrooveDepth'],
    results: ['web', 'webStrength', 'webStiffness'],
    says: (v) =>
      v.web > 0 ? (
        <>
          The deeper groove leaves <Quantity value={v.web} kind="length" /> of wood, with{' '}
          <Quantity value={v.webStrength} kind="percent" digits={0} /> of the wall’s strength and{' '}
          <Quantity value={v.webStiffness} kind="percent" digits={0} /> of its stiffness.
        </>
      ) : (
        'The groove goes through the wall: nothing is left.'
      ),
  },
};

export const lesson = { labs, guesses: grooveMarginsGuesses, model: modelOf(grooves) };
export default islandOf(lesson);
