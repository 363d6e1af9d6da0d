/** What all labs of a year have in common: the shared year and day, and a sentence in place of a picture where there is no number. */
import type { ComponentChildren } from 'preact';
import { modelOf } from '../../../box/subjects/model.ts';
import {
  type DayOfBuilding,
  dayOfBuilding,
  figuresOf,
  moistureOf,
  type PanelMoisture,
} from '../../../box/subjects/movement/panel-year.ts';
import type { PanelName } from '../../../box/subjects/movement/results.ts';
import { movement } from '../../../box/subjects/movement/subject.ts';
import type { Values } from '../../../box/whole/index.ts';
import type { YearOfAir } from '../../../calc/air/year.ts';
import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { type Store, useStore } from '../../kit/use-store.ts';
import { LabFrame } from '../../lesson/Lab.tsx';
import { ClimateControl } from './ClimateControl.tsx';
import { BuildDay } from './DayControl.tsx';
import { type ChosenYear, useYear } from './use-year.ts';

const model = modelOf(movement);

export const Length = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;

/** Why there is no picture, in its place. */
const NoFigure = ({ why }: { why: string }) => (
  <p class="message" role="status">
    There is no number here. {why}
  </p>
);

/** One panel of the reader's box in the reader's year. */
export interface Known {
  readonly year: YearOfAir;
  readonly moisture: PanelMoisture;
  readonly day: DayOfBuilding;
  readonly built: number;
}
export type Drawn = (
  v: Values,
  known: Known,
) => { picture: ComponentChildren; says: ComponentChildren } | Refused;

interface YearLabProps {
  title: string;
  part: PanelName;
  draw: Drawn;
  /** The whole year counts, whatever the day. */
  anyDay?: true;
  /** Further controls in sight and behind "more". */
  controls?: (store: Store) => ComponentChildren;
  more?: (store: Store, year: ChosenYear) => ComponentChildren;
  results?: (v: Values, known: Known, store: Store) => ComponentChildren;
}

/** What all labs of a year have in common: the shared controls, and the refusal in place of a picture. */
export function YearLab({ title, part, draw, anyDay, controls, more, results }: YearLabProps) {
  const store = useStore(model);
  const v = store.values.value;
  const chosen = useYear(v);
  const { year, choice } = chosen;
  const moisture = isRefused(year) ? year : moistureOf(v, part, year);
  const day = isRefused(moisture) ? moisture : dayOfBuilding(figuresOf(v), moisture.middle, choice.built);
  const known =
    isRefused(year) || isRefused(moisture) || isRefused(day)
      ? undefined
      : { year, moisture, day, built: choice.built };
  const drawn = known && draw(v, known);
  const refused = [year, moisture, day, drawn].find(isRefused);
  return (
    <LabFrame
      within={store.ref}
      title={title}
      picture={
        refused || !drawn || isRefused(drawn) ? (
          <NoFigure why={refused?.refused ?? ''} />
        ) : (
          <>
            {drawn.picture}
            <p class="says">{drawn.says}</p>
            {v[part] === 'plywood' && (
              <p class="help">
                Yours is plywood, which moves about a fifteenth as much: this is the same panel in solid wood.
              </p>
            )}
          </>
        )
      }
      controls={
        <>
          <ClimateControl choice={choice} system={store.units.value} />
          {!anyDay && <BuildDay choice={choice} />}
          {controls?.(store)}
          {more?.(store, chosen)}
        </>
      }
      results={!refused && known && results?.(v, known, store)}
    />
  );
}

export const More = ({ children }: { children: ComponentChildren }) => (
  <details class="more">
    <summary>more to change</summary>
    {children}
  </details>
);
