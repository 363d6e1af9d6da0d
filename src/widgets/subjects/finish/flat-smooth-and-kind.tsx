/** Labs and guesses of the lesson on surfaces: the rim made flat, papers, films and mixes. */
import { finish } from '../../../box/subjects/finish/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { square } from '../../../box/subjects/square/subject.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { batchLab } from './batch.tsx';
import { filmsLab, tongueLab } from './coats.tsx';
import { flatSmoothAndKindGuesses } from './flat-smooth-and-kind-guesses.tsx';

export const lesson = {
  labs: { films: filmsLab, tongue: tongueLab, batch: batchLab },
  guesses: flatSmoothAndKindGuesses,
  model: modelOf(finish, square),
};
export default islandOf(lesson);
