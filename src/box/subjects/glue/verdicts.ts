/** Checks on the glue-up. Ranges are common practice; the thickest film is as remembered. */
import { thickestFilm } from '../../../calc/glue/film.ts';
import type { Check } from '../../core/verdict.ts';
import type { GlueValues } from './results.ts';

const none = Number.NEGATIVE_INFINITY;

export const glueChecks: readonly Check<GlueValues>[] = [
  {
    id: 'thin-even-film',
    rule: 'thin-even-film',
    label: 'room for glue beside a finger, dry',
    kind: 'length',
    as: 'fine',
    applies: (v) => v.joint === 'finger',
    of: 'glueFilm',
    usual: { mm: [none, thickestFilm.mm], inch: [none, thickestFilm.inch] },
    says: {
      low: '',
      high: 'The clamps press on wood that does not touch, and the glue has to bridge the rest. It shrinks as it dries.',
      inside: 'A thin film fills it, and the faces touch without force.',
    },
  },
  {
    id: 'clamp-time-and-warmth',
    rule: 'clamp-time-and-warmth',
    label: 'temperature of wood and room',
    kind: 'temperature',
    digits: 0,
    of: 'temperature',
    usual: [13, Number.POSITIVE_INFINITY],
    says: {
      low: 'The water leaves, and no film forms: the line turns white and chalky. Warm wood, glue and room, or see which temperature the label of the glue allows.',
      high: '',
      inside: 'Warm enough for white or yellow glue to form its film; in heat it skins sooner.',
    },
  },
  {
    id: 'wait-for-the-glue-water',
    rule: 'wait-for-the-glue-water',
    label: 'days until nine tenths of the glue’s water has left the walls',
    kind: 'days',
    of: 'glueWaterWait',
    usual: [none, 7],
    unknown: 'The tables give no density for this wood, so how fast its water leaves is not known here.',
    says: {
      low: '',
      high: 'Walls so thick hold the water longer than the usual week. Level show work later, or leave the line alone.',
      inside:
        'The usual week of waiting is enough for these walls; the figure is good to a factor of about two.',
    },
  },
];
