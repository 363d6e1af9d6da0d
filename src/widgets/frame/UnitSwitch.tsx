/** Millimeters or inches, for the whole notebook. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { chooseUnits, units } from '../../notebook/units.ts';
import type { UnitSystem } from '../../units/index.ts';

const systems: readonly (readonly [UnitSystem, string])[] = [
  ['mm', 'mm'],
  ['inch', 'inch'],
];

export default function UnitSwitch() {
  const live = useSignal(false);
  useEffect(() => {
    live.value = true;
  }, []);
  return (
    <fieldset class="unit-switch">
      <legend>units</legend>
      {systems.map(([system, label]) => (
        <label key={system}>
          <input
            type="radio"
            name="units"
            checked={live.value && units.value === system}
            onChange={() => chooseUnits(system)}
          />
          {label}
        </label>
      ))}
    </fieldset>
  );
}
