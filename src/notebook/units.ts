/**
 * Millimeters or inches: the reader's choice, else that of the browser's language.
 * `layouts/Base.astro` sets `data-units` before the first paint; here it becomes a signal.
 */
import { signal } from '@preact/signals';
import type { UnitSystem } from '../units/index.ts';
import { save } from './storage.ts';

export const units = signal<UnitSystem>(
  typeof document !== 'undefined' && document.documentElement.dataset.units === 'inch' ? 'inch' : 'mm',
);

/** Chooses the units; no value moves, only how it is written. */
export function chooseUnits(system: UnitSystem): void {
  units.value = system;
  document.documentElement.dataset.units = system;
  save('units', system);
}
