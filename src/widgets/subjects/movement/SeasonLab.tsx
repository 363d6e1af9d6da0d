/** In which season to build a lid: the play that each day of building asks. */

import { allowanceOf, setupOf } from '../../../box/subjects/movement/panel-year.ts';
import type { PanelName } from '../../../box/subjects/movement/results.ts';
import { dateOf } from '../../../calc/air/year.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { buildSeason } from '../../../calc/movement/build-season.ts';
import { BuildSeason } from '../../../figures/movement/BuildSeason.tsx';
import { Control } from '../../kit/Control.tsx';
import { Asked } from './Asked.tsx';
import { type Drawn, Length, More, YearLab } from './YearLab.tsx';

const season =
  (part: PanelName): Drawn =>
  (v, { moisture, built }) => {
    const setup = setupOf(v, part);
    const found = buildSeason(setup, moisture.middle);
    if (isRefused(found)) return found;
    const { safe, leastDay, mostDay, playToLeave } = found;
    const stretches = safe.map(({ from, to }) =>
      to - from === 364 ? 'on any day' : `from ${dateOf(from)} to ${dateOf(to)}`,
    );
    return {
      picture: (
        <BuildSeason
          part={part}
          season={found}
          allowance={allowanceOf(part)}
          play={setup.play}
          built={built}
        />
      ),
      says: (
        <>
          A {part} built around {dateOf(leastDay)} needs the least play,{' '}
          <Length of={playToLeave[leastDay]!} />; around {dateOf(mostDay)} the most,{' '}
          <Length of={playToLeave[mostDay]!} />. Your play of <Length of={setup.play} />{' '}
          {safe.length > 0
            ? `is right for one built ${stretches.join(' and ')}.`
            : 'is right on no day: change it, or deepen the groove.'}
        </>
      ),
    };
  };

export const SeasonLab = () => (
  <YearLab
    title="In which season to build"
    part="lid"
    draw={season('lid')}
    controls={(store) => <Control name="lidPlay" store={store} />}
    more={(store) => (
      <More>
        <Control name="ringAngle" store={store} />
        <Control name="lidGrooveDepth" store={store} />
      </More>
    )}
    results={(v, known, store) => <Asked v={v} part="lid" known={known} store={store} />}
  />
);
