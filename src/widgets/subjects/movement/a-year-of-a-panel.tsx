/** Labs of the lesson on a year of a panel. They share one year of air, see `notebook/year.ts`. */
import { modelOf } from '../../../box/subjects/model.ts';
import { movement } from '../../../box/subjects/movement/subject.ts';
import type { SharingLabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { askedRelations } from './Asked.tsx';
import { GluedLab } from './GluedLab.tsx';
import { lifeLab } from './LifeLab.tsx';
import { SeasonLab } from './SeasonLab.tsx';
import { SayingsLab, WoodsLab } from './WoodsLab.tsx';

const labs: Record<string, SharingLabSpec> = {
  bottom: { relations: askedRelations, component: lifeLab('bottom') },
  lid: { relations: [], component: lifeLab('lid') },
  season: { relations: askedRelations, component: SeasonLab },
  woods: { relations: [], component: WoodsLab },
  glued: { relations: [], component: GluedLab },
  sayings: { relations: [], component: SayingsLab },
};

export const lesson = { labs, model: modelOf(movement) };
export default islandOf(lesson);
