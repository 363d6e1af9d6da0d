/** Which kind of number a relation's unit makes, so that `format` can print it in the reader's units. */
import type { SymbolSpec, Unit } from '../../../calc/core/relation.ts';
import type { Kind } from '../../../units/index.ts';

const kinds: Partial<Record<Unit, Kind>> = {
  mm: 'length',
  'mm^2': 'area',
  'mm^3': 'volume',
  N: 'force',
  'N/mm': 'lineLoad',
  MPa: 'stress',
  g: 'mass',
  '%': 'percent',
  degC: 'temperature',
  deg: 'angle',
  day: 'days',
};

export const kindOfUnit = ({ unit, points }: Pick<SymbolSpec, 'unit' | 'points'>): Kind =>
  points ? 'points' : (kinds[unit] ?? 'number');
