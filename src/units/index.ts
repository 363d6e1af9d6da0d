/** Units: text to number, number to text, and the two native grids. Knows nothing of the screen. Reading is imported from
 * `parse.ts` by itself: a page fetches it with the first text that is typed. */
export { fieldUnit, spokenUnit, toField } from './field.ts';
export { type Denominator, type FormatOptions, format } from './format.ts';
export { INCH, type Kind, type UnitSystem } from './kinds.ts';
export { systemFromLocale } from './locale.ts';
export type { Parsed } from './parse.ts';
export { type Rounding, toDecimals } from './rounding.ts';
export {
  isOn,
  pairOf,
  type Ruler,
  type RulerName,
  type RulerPair,
  rulerNames,
  rulers,
  toMark,
  usualRuler,
} from './rulers.ts';
