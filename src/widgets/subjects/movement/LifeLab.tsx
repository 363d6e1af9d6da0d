/** A panel through a year: the air, its moisture and its gap, from the day of building on. */
import { fields } from '../../../box/subjects/inputs.ts';
import { setupOf } from '../../../box/subjects/movement/panel-year.ts';
import type { PanelName } from '../../../box/subjects/movement/results.ts';
import { curveThrough, dateOf } from '../../../calc/air/year.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { fromDay } from '../../../calc/movement/build-season.ts';
import { type PanelCourse, panelCourse } from '../../../calc/movement/panel-year.ts';
import { PanelLife } from '../../../figures/movement/PanelLife.tsx';
import { Control } from '../../kit/Control.tsx';
import type { Store } from '../../kit/use-store.ts';
import { Asked } from './Asked.tsx';
import { MonthControls } from './numbers.tsx';
import type { ChosenYear } from './use-year.ts';
import { type Drawn, More, YearLab } from './YearLab.tsx';

/** The first day on which something happens, over what is known of the wood: one date, two, or a doubt. */
function whenever(days: readonly (number | undefined)[], built: number) {
  const found = days.filter((day) => day !== undefined);
  if (found.length === 0) return undefined;
  const [first, last] = [dateOf(built + Math.min(...found)), dateOf(built + Math.max(...found))];
  const when = first === last ? `from ${first}` : `from some day between ${first} and ${last}`;
  return { sure: found.length === days.length, when };
}

const life =
  (part: PanelName): Drawn =>
  (v, { year, moisture, day, built }) => {
    const setup = setupOf(v, part);
    const courses = [moisture.slow, moisture.middle, moisture.fast].map((mean) =>
      panelCourse(setup, fromDay(mean, built)),
    );
    const refused = courses.find(isRefused);
    if (refused) return refused;
    const known = courses as PanelCourse[];
    const jams = whenever(
      known.map((course) => course.jams),
      built,
    );
    const drops = whenever(
      known.map((course) => course.dropsCrept),
      built,
    );
    const fate = [
      jams && `${jams.sure ? 'jams' : 'may jam'} ${jams.when}`,
      drops && `${drops.sure ? 'drops out' : 'may drop out'} of its groove, pushed aside, ${drops.when}`,
    ].filter(Boolean);
    const days = (value: number) => Math.max(1, Math.round(value));
    const [late, soon] = moisture.lag;
    return {
      picture: (
        <PanelLife
          part={part}
          humidity={year.humidity}
          moisture={moisture}
          life={known[1]}
          built={built}
          groove={setup.groove}
        />
      ),
      says: (
        <>
          Built on {dateOf(built)} the {part} {fate.join(', and ') || 'stays free and in its groove all year'}
          .{' '}
          {moisture.because ??
            `It follows the season ${days(soon) === days(late) ? `about ${days(late)}` : `${days(soon)} to ${days(late)}`} days late and keeps ${Math.floor(100 * moisture.kept[0])} to ${Math.round(100 * moisture.kept[1])} % of its swing.`}{' '}
          {day.method === 'shrinkage' && day.because}
        </>
      ),
    };
  };

/** Gives the box the air of this year: its driest, its dampest, and that of the day of building. */
function PutAirInMyBox({ store, year, choice }: ChosenYear & { store: Store }) {
  if (isRefused(year)) return null;
  const inField = (humidity: number) =>
    Math.max(fields.humidityToday.low, Math.min(fields.humidityToday.high, Math.round(humidity)));
  const air = {
    humidityDry: inField(Math.min(...year.humidity)),
    humidityDamp: inField(Math.max(...year.humidity)),
    humidityToday: inField(curveThrough(year.humidity)(choice.built)),
  };
  const isThere = Object.entries(air).every(
    ([name, value]) => store.values.value[name as keyof typeof air] === value,
  );
  return (
    <p>
      <button type="button" class="quiet" aria-disabled={isThere} onClick={() => !isThere && store.set(air)}>
        {isThere ? 'my box has this air' : 'put this air in my box'}
      </button>
    </p>
  );
}

/** The bottom's lab has it all; the lid's follows it. */
export const lifeLab = (part: PanelName) => () => (
  <YearLab
    title={`The ${part} through a year`}
    part={part}
    draw={life(part)}
    controls={(store) => <Control name={part === 'bottom' ? 'bottomGap' : 'lidPlay'} store={store} />}
    more={(store, chosen) =>
      part === 'bottom' && (
        <>
          <PutAirInMyBox store={store} {...chosen} />
          <MonthControls {...chosen} system={store.units.value} />
          <More>
            {(['ringAngle', 'bottomThickness', 'grooveDepth'] as const).map((name) => (
              <Control key={name} name={name} store={store} />
            ))}
          </More>
        </>
      )
    }
    results={(v, known, store) =>
      part === 'bottom' && <Asked v={v} part={part} known={known} store={store} />
    }
  />
);
