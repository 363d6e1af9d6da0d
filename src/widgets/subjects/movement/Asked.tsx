/** What the day of building asks of the panel, in numbers that can say why. */

import { panelOf } from '../../../box/subjects/movement/panel-state.ts';
import { allowanceOf } from '../../../box/subjects/movement/panel-year.ts';
import type { PanelName } from '../../../box/subjects/movement/results.ts';
import type { Values } from '../../../box/whole/index.ts';
import { halfTime } from '../../../calc/air/diffusion-series.ts';
import { ROOM_SURFACE } from '../../../calc/air/slab.ts';
import { work } from '../../../calc/core/working.ts';
import { engagementCrept, gapPerSide, playToday, widthToCut } from '../../../calc/movement/panel.ts';
import { widthBesidePlay } from '../../../calc/movement/panel-play.ts';
import { RelationLine } from '../../kit/ResultLine.tsx';
import type { Store } from '../../kit/use-store.ts';
import type { Known } from './YearLab.tsx';

/** The relations behind it. */
export const askedRelations = [gapPerSide, playToday, widthBesidePlay, engagementCrept, halfTime];

export function Asked({ v, part, known, store }: { v: Values; part: PanelName; known: Known; store: Store }) {
  const { today, driest, dampest, perPoint: C } = known.day;
  const { groove: g } = panelOf(v, part);
  const [B, c, u, f] = [v.insideWidth + 2 * g, allowanceOf(part), dampest - today, today - driest];
  const W = widthToCut.compute({ B, C, u, c });
  const p = B - W;
  const given = { W, C, u, f, c, B, p, g };
  const shared = { kind: 'length', units: store.units.value } as const;
  const thickness = part === 'bottom' ? v.bottomThickness : v.lidThickness;
  return (
    <>
      {part === 'bottom' ? (
        <RelationLine
          {...shared}
          label="gap to leave on that day at each side, so that it never jams"
          working={work(gapPerSide, given)}
          round="up"
          digits={2}
          rule="gap-beside-the-bottom"
        />
      ) : (
        <RelationLine
          {...shared}
          label="play to leave on that day, so that it never jams"
          working={work(playToday, given)}
          round="up"
          digits={2}
          rule="lid-clearance"
        />
      )}
      <RelationLine
        {...shared}
        label={`${part}, width to cut on that day`}
        working={work(widthBesidePlay, given)}
        round="down"
        digits={1}
        rule="season-to-build-in"
      />
      <RelationLine
        {...shared}
        label="then held at the driest, crept, worse side"
        working={work(engagementCrept, given)}
        digits={2}
        rule={part === 'bottom' ? 'gap-beside-the-bottom' : 'lid-engagement'}
      />
      {part === 'bottom' && known.moisture.diffusion > 0 && (
        <RelationLine
          label="days until half of a change has happened, give or take a factor of two"
          kind="days"
          digits={1}
          working={work(halfTime, { T: 2 * thickness, D: known.moisture.diffusion, S: ROOM_SURFACE })}
          units={store.units.value}
          rule="thin-parts-follow-the-year"
        />
      )}
    </>
  );
}
