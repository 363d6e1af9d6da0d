/**
 * The reader's ruler, and with it millimeters or inches: their choice, else that of the browser's language.
 *
 * `layouts/Base.astro` sets `data-units` before the first paint, from what is kept under `units`; the ruler is kept beside
 * it, so a device that has units from an earlier visit and no ruler gets the usual one of those units.
 */
import { computed, signal } from '@preact/signals';
import { type Ruler, rulers, usualRuler } from '../units/index.ts';
import { load, save } from './storage.ts';

function first(): Ruler {
  if (typeof document === 'undefined') return usualRuler.mm;
  const system = document.documentElement.dataset.units === 'inch' ? 'inch' : 'mm';
  const kept = Object.values(rulers).find(({ name }) => name === load('ruler'));
  return kept?.system === system ? kept : usualRuler[system];
}

export const ruler = signal<Ruler>(first());
export const units = computed(() => ruler.value.system);

/** Chooses the ruler; no value moves, only how it is written and in which steps it is set. */
export function chooseRuler(chosen: Ruler): void {
  ruler.value = chosen;
  document.documentElement.dataset.units = chosen.system;
  save('units', chosen.system);
  save('ruler', chosen.name);
}
