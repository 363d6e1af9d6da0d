/** Labs and guesses of the lesson on a year of a panel. The labs share one year of air, see `notebook/measure/year.ts`. */
import { modelOf } from '../../../box/subjects/model.ts';
import { movement } from '../../../box/subjects/movement/subject.ts';
import type { SharingLabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { askedRelations } from './Asked.tsx';
import { aYearOfAPanelGuesses } from './a-year-of-a-panel-guesses.tsx';
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

export const lesson = { labs, guesses: aYearOfAPanelGuesses, model: modelOf(movement) };
export default islandOf(lesson);
