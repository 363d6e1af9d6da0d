/** Labs of the lesson on finishes. Their numbers are their own; wood, air and lid are those of the box. */
import { finishModel } from '../../box/models/finish.ts';
import { cupFromFaces } from '../../calc/cup-faces.ts';
import { seasonKept } from '../../calc/film-times.ts';
import { surfaceUnderFinish } from '../../calc/finish.ts';
import { FacesLab } from '../finish/FacesLab.tsx';
import { RaceLab } from '../finish/RaceLab.tsx';
import { SeasonLab } from '../finish/SeasonLab.tsx';
import type { OwnLabSpec } from '../Lab.tsx';
import { islandOf } from '../subject.tsx';

const labs: Record<string, OwnLabSpec> = {
  race: { own: RaceLab, relations: [surfaceUnderFinish] },
  season: { own: SeasonLab, relations: [seasonKept] },
  faces: { own: FacesLab, relations: [cupFromFaces] },
};

export const subject = { labs, model: finishModel };
export default islandOf(subject);
