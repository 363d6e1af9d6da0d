/** Labs of the lesson on a year of a panel. They share one year of air, see `notebook/year.ts`. */
import { movementModel } from '../../box/models/movement.ts';
import type { OwnLabSpec } from '../Lab.tsx';
import { islandOf } from '../subject.tsx';
import { askedRelations } from '../year/Asked.tsx';
import { GluedLab } from '../year/GluedLab.tsx';
import { lifeLab } from '../year/LifeLab.tsx';
import { SeasonLab } from '../year/SeasonLab.tsx';
import { SayingsLab, WoodsLab } from '../year/WoodsLab.tsx';

const labs: Record<string, OwnLabSpec> = {
  bottom: { relations: askedRelations, own: lifeLab('bottom') },
  lid: { relations: [], own: lifeLab('lid') },
  season: { relations: askedRelations, own: SeasonLab },
  woods: { relations: [], own: WoodsLab },
  glued: { relations: [], own: GluedLab },
  sayings: { relations: [], own: SayingsLab },
};

export const subject = { labs, model: movementModel };
export default islandOf(subject);
