/** Labs and guesses of the lesson on finishes. Their numbers are their own; wood, air and lid are those of the box. */
import { finish } from '../../../box/subjects/finish/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { facesLab } from './faces.tsx';
import { raceLab } from './race.tsx';
import { seasonLab } from './season.tsx';
import { whatAFinishDoesGuesses } from './what-a-finish-does-guesses.tsx';

export const lesson = {
  labs: { race: raceLab, season: seasonLab, faces: facesLab },
  guesses: whatAFinishDoesGuesses,
  model: modelOf(finish),
};
export default islandOf(lesson);
