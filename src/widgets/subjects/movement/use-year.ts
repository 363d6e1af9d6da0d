/** The year of air that all figures of a page share. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Values } from '../../../box/whole/index.ts';
import type { YearOfAir } from '../../../calc/air/year.ts';
import type { Refused } from '../../../calc/core/refusal.ts';
import { firstYear, loadYear, type YearChoice, yearChoice, yearOf } from '../../../notebook/measure/year.ts';

export interface ChosenYear {
  readonly choice: YearChoice;
  readonly year: YearOfAir | Refused;
}

/** The year all figures of the page share. In its first render it is the one the page was built with. */
export function useYear(v: Values): ChosenYear {
  const live = useSignal(false);
  useEffect(() => {
    loadYear();
    live.value = true;
  }, []);
  const choice = live.value ? yearChoice.value : firstYear;
  return { choice, year: yearOf(choice, v) };
}
