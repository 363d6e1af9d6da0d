/** Checks that the lessons on finishes teach: what three coats leave of the fit of a lid. */
import type { Check } from '../../core/verdict.ts';
import type { FinishValues } from './results.ts';

export const finishChecks: readonly Check<FinishValues>[] = [
  {
    id: 'no-finish-on-running-surfaces',
    rule: 'no-finish-on-running-surfaces',
    label: 'play of the lid on the dampest day, less three coats on its edges',
    kind: 'length',
    as: 'fine',
    applies: (v) => v.kind === 'sliding',
    of: 'lidPlayCoated',
    usual: () => [0, Number.POSITIVE_INFINITY],
    says: {
      low: 'Three coats on the edges of this lid would jam it on the dampest day. Leave them bare, and wax them.',
      high: '',
      inside:
        'Even with three coats on its edges it would run on the dampest day. Bare and waxed it runs better.',
    },
  },
  {
    id: 'film-on-a-tongue',
    rule: 'film-on-a-tongue',
    label: 'coats that fit on the edges of the lid on the dampest day',
    kind: 'number',
    digits: 1,
    applies: (v) => v.kind === 'sliding',
    of: 'coatsOnEdges',
    usual: [3, Number.POSITIVE_INFINITY],
    unknown: 'On the dampest day this lid has no play to give to a film: look at its play first.',
    says: {
      low: 'Three coats would take more than the play of its edges on the dampest day. Tape them, or give the lid more play.',
      high: '',
      inside:
        'Beside the lid there is room for a usual finish. In its thickness a tongue bears less: tape it all the same.',
    },
  },
  {
    id: 'film-on-a-tongue-liner',
    rule: 'film-on-a-tongue',
    label: 'room around the liner on each side, less three coats on liner and lid',
    kind: 'length',
    as: 'fine',
    applies: (v) => v.kind === 'lift-off',
    of: 'lidRoomCoated',
    usual: () => [0, Number.POSITIVE_INFINITY],
    says: {
      low: 'Three coats on liner and lid would take more than its room. Plane the liner after the finish is dry, or leave both bare.',
      high: '',
      inside:
        'Even with three coats on both it would go on. Measure the room you want after the finish, not before.',
    },
  },
];
