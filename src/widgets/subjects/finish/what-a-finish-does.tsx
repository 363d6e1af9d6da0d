/** Labs of the lesson on finishes. Their numbers are their own; wood, air and lid are those of the box. */

import { finish } from '../../../box/subjects/finish/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { seasonKept } from '../../../calc/air/film-times.ts';
import { surfaceUnderFinish } from '../../../calc/finish/finish.ts';
import { cupFromFaces } from '../../../calc/movement/cup-faces.ts';
import type { OwnLabSpec } from '../../lesson/Lab.tsx';
import { islandOf } from '../../lesson/lesson.tsx';
import { FacesLab } from './FacesLab.tsx';
import { RaceLab } from './RaceLab.tsx';
import { SeasonLab } from './SeasonLab.tsx';

const labs: Record<string, OwnLabSpec> = {
  race: { own: RaceLab, relations: [surfaceUnderFinish] },
  season: { own: SeasonLab, relations: [seasonKept] },
  faces: { own: FacesLab, relations: [cupFromFaces] },
};

export const lesson = { labs, model: modelOf(finish) };
export default islandOf(lesson);
