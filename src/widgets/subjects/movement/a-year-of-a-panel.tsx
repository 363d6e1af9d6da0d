/** Labs of the lesson on a year of a panel. They share one year of air, see `notebook/year.ts`. */
import { modelOf } from '../../../box/subjects/model.ts';
import { movement } from '../../../box/subjects/movement/subject.ts';
import type { OwnLabSpec } from '../../lesson/Lab.tsx';
import { islandOf } from '../../lesson/lesson.tsx';
import { askedRelations } from './Asked.tsx';
import { GluedLab } from './GluedLab.tsx';
import { lifeLab } from './LifeLab.tsx';
import { SeasonLab } from './SeasonLab.tsx';
import { SayingsLab, WoodsLab } from './WoodsLab.tsx';

const labs: Record<string, OwnLabSpec> = {
  bottom: { relations: askedRelations, own: lifeLab('bottom') },
  lid: { relations: [], own: lifeLab('lid') },
  season: { relations: askedRelations, own: SeasonLab },
  woods: { relations: [], own: WoodsLab },
  glued: { relations: [], own: GluedLab },
  sayings: { relations: [], own: SayingsLab },
};

export const lesson = { labs, model: modelOf(movement) };
export default islandOf(lesson);
