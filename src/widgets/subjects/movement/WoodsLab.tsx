/** The reader's bottom over the same year in other woods and cuts, and the rules of thumb of the trade beside that year. */
import { panelOf } from '../../../box/subjects/movement/panel-state.ts';
import { dayOfBuilding, moistureOf } from '../../../box/subjects/movement/panel-year.ts';
import { woodById } from '../../../box/wood/woods.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { widthFigures } from '../../../calc/movement/movement.ts';
import { GapSayings } from '../../../figures/movement/GapSayings.tsx';
import { WoodsCompared } from '../../../figures/movement/WoodsCompared.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { Control } from '../../kit/Control.tsx';
import { type Drawn, Length, YearLab } from './YearLab.tsx';

/** Woods shown beside the reader's own: stable ones and such as move a lot of the trade, all with figures in the tables. */
const others = ['black-cherry', 'black-walnut', 'sugar-maple', 'commercial-red-oak'] as const;

const compared: Drawn = (v, { year }) => {
  const part = 'bottom';
  const { width, play } = panelOf(v, part);
  const woods = [v.species, ...others.filter((id) => id !== v.species)].map((id) => {
    const wood = woodById(id);
    const moisture = moistureOf(v, part, year, wood?.specificGravity?.value ?? Number.NaN);
    const swing = (angle: number) => {
      if (!wood || isRefused(moisture)) return Number.NaN;
      const day = dayOfBuilding(widthFigures(wood, angle), moisture.middle, 0);
      return isRefused(day) ? Number.NaN : width * day.perPoint * (day.dampest - day.driest);
    };
    return { name: wood?.name ?? id, own: id === v.species, flat: swing(0), quarter: swing(90) };
  });
  const own = woods[0]!;
  return {
    picture: <WoodsCompared woods={woods} play={play} part={part} />,
    says: (
      <>
        Over this year your {part} goes <Length of={own.flat} /> flat-sawn and <Length of={own.quarter} />{' '}
        quarter-sawn. A bar beyond the mark jams if it is built in the driest week.
      </>
    ),
  };
};

/** The sayings of the lesson on movement, with the swing of this year in place of the two humidities. */
const sayings: Drawn = (v, { day }) => ({
  picture: (
    <GapSayings
      values={{ ...v, moistureToday: day.today, moistureDamp: day.dampest, movementUp: day.perPoint }}
    />
  ),
  says: (
    <>
      From that day on the bottom still gains{' '}
      <Quantity value={day.dampest - day.today} kind="points" digits={1} />; over the whole year it swings{' '}
      <Quantity value={day.dampest - day.driest} kind="points" digits={1} />.
    </>
  ),
});

export const WoodsLab = () => (
  <YearLab
    title="The same bottom in other woods"
    part="bottom"
    draw={compared}
    anyDay
    controls={(store) => <Control name="species" store={store} />}
  />
);

export const SayingsLab = () => (
  <YearLab title="What the rules of thumb assume, in this year" part="bottom" draw={sayings} />
);
