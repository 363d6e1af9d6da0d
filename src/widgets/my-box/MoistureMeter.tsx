/** What a moisture meter reads today, beside the humidity: each says what it makes of the other, and either sets both. */
import { useComputed } from '@preact/signals';
import { humidityOfMoisture } from '../../calc/air/meter.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import type { Store } from '../kit/use-store.ts';
import { DirectNumber } from './DirectNumber.tsx';

/** No meter reads beyond, %: at once a guard against slips of the keyboard. */
const most = 40;

export function MoistureMeter({ store }: { store: Store }) {
  const moisture = useComputed(() => store.values.value.moistureToday).value;
  const humidity = useComputed(() => store.values.value.humidityToday).value;
  return (
    <DirectNumber
      label="or what a moisture meter reads"
      kind="percent"
      value={moisture}
      low={0}
      high={most}
      digits={1}
      system={store.units.value}
      set={(reading) => {
        const found = humidityOfMoisture(store.values.peek().temperature, reading);
        if (isRefused(found)) return found.refused;
        store.set({ humidityToday: found.humidity });
        return undefined;
      }}
    >
      Air of <Quantity value={humidity} kind="percent" digits={0} /> brings wood to{' '}
      <Quantity value={moisture} kind="percent" digits={1} />, and wood that reads so has lain in such air.
      Set the meter for your wood and its temperature first, as its manual says.
    </DirectNumber>
  );
}
