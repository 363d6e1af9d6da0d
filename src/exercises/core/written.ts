/** Keys as they are printed: on a sheet of keys, in a table, on the screen. */

import type { UnitSystem } from '../../units/index.ts';
import { type Asked, type NumberAsked, write } from './exercise.ts';

/** The right answer. */
export const keyText = (asked: Asked, system: UnitSystem): string =>
  asked.type === 'number'
    ? write(asked.key, asked.print, system)
    : asked.options.find((one) => one.id === asked.key)!.text;

/** How far from the key is still right: "0.1 mm"; empty where only the key is. */
export const nearness = ({ within, print }: NumberAsked, system: UnitSystem): string =>
  within === 0
    ? ''
    : write(
        within,
        print.kind === 'length' ? { kind: 'length', as: 'exact' } : { ...print, round: 'nearest' },
        system,
      );
