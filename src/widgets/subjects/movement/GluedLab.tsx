/** A strip glued across the lid: how far the two want to differ, as a number. */

import { useSignal } from '@preact/signals';
import type { NumberField } from '../../../box/core/field.ts';
import { panelOf } from '../../../box/subjects/movement/panel-state.ts';
import { figuresOf } from '../../../box/subjects/movement/panel-year.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { gluedOn } from '../../../calc/movement/glued-on.ts';
import { GluedOn } from '../../../figures/movement/GluedOn.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import { Control, NumberControl } from '../../kit/Control.tsx';
import { type Drawn, Length, More, YearLab } from './YearLab.tsx';

const joint: NumberField = {
  type: 'number',
  label: 'length of the strip across the grain',
  kind: 'length',
  low: 5,
  high: 200,
  step: 5,
  inchStep: INCH / 4,
  digits: 0,
  denominator: 8,
};

export function GluedLab() {
  const wanted = useSignal(30);
  const draw: Drawn = (v, { day }) => {
    const width = panelOf(v, 'lid').width;
    const length = Math.min(wanted.value, width);
    const [up, down] = [day.dampest, day.driest].map((to) => gluedOn(length, figuresOf(v), day.today, to));
    if (!up || !down || isRefused(up)) return up && isRefused(up) ? up : { refused: '' };
    if (isRefused(down)) return down;
    const range = ({ low, high }: { low: number; high: number }) =>
      high < 0.005 ? (
        'nothing'
      ) : high - low < 0.01 ? (
        <Length of={high} />
      ) : (
        <>
          <Length of={low} /> to <Length of={high} />
        </>
      );
    return {
      picture: (
        <GluedOn
          width={width}
          length={v.insideLength}
          joint={length}
          growing={up.eachEnd.high / length}
          shrinking={down.eachEnd.high / length}
        />
      ),
      says: (
        <>
          Glued on that day, a strip <Quantity value={length} kind="length" digits={0} denominator={8} /> long
          and the lid want to differ at each end by {range(up.eachEnd)} on the dampest day, and by{' '}
          {range(down.eachEnd)} the other way on the driest.
        </>
      ),
    };
  };
  return (
    <YearLab
      title="A strip glued across the lid"
      part="lid"
      draw={draw}
      controls={(store) => (
        <NumberControl
          field={joint}
          value={wanted.value}
          system={store.units.value}
          set={(to) => {
            wanted.value = to;
          }}
        />
      )}
      more={(store) => (
        <More>
          <Control name="ringAngle" store={store} />
        </More>
      )}
    />
  );
}
