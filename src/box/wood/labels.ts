/** How a wood is written in a list and below it: what its figures are worth must be seen where it is chosen. */
import type { Wood } from '../../calc/core/wood.ts';
import { woodById } from './woods.ts';

/** The name, with a mark on averages over several species and on figures from memory. */
export function woodLabel({ name, isGroup, radialCoefficient, tangentialCoefficient }: Wood): string {
  const remembered = [radialCoefficient, tangentialCoefficient].some((of) => of?.status === 'from memory');
  return `${name}${remembered ? '§' : ''}${isGroup ? ' (group average)' : ''}`;
}

const worth = {
  read: 'Movement figures read in the table',
  derived: 'Movement figures calculated from another published figure',
  'from memory': 'Movement figures from memory, not checked against the table',
} as const;

/** How the movement figures of this wood are known and where they stand, in a sentence or two. Empty for an id not known. */
export function woodNote(species: string): string {
  const wood = woodById(species);
  if (!wood) return '';
  // The figures along and across the rings may differ in how they are known: the weaker one speaks.
  const figures = [wood.tangentialCoefficient, wood.radialCoefficient];
  const weakest = (['from memory', 'derived', 'read'] as const)
    .map((status) => figures.find((figure) => figure?.status === status))
    .find(Boolean);
  if (!weakest) return 'No movement figure is known for this wood.';
  const source = weakest.source.replace(/, from memory$/, '');
  return [
    `${worth[weakest.status]}: ${source}.`,
    wood.isGroup && 'An average over several species: a single board may move more.',
    wood.lowFiberSaturation && 'It stops growing well below 30 %, so there is a figure from 6 to 14 % only.',
  ]
    .filter(Boolean)
    .join(' ');
}
