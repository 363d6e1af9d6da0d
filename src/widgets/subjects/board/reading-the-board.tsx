/** Labs of the lesson on reading the board. Their numbers are their own; only the wood is that of the box. */
import { modelOf } from '../../../box/subjects/model.ts';
import { movement } from '../../../box/subjects/movement/subject.ts';
import { cupAnyWidth, cupExact, cupNarrow } from '../../../calc/board/cup.ts';
import { movementOfThickness, movementOfWidth } from '../../../calc/movement/movement.ts';
import type { LabSpec, SharingLabSpec } from '../../lesson/lab-spec.ts';
import { islandOf } from '../../lesson/lesson.tsx';
import { FaceLab } from './FaceLab.tsx';
import { facesCupLab } from './faces-cup.tsx';
import { LogLab } from './LogLab.tsx';
import { RingCupLab } from './RingCupLab.tsx';
import { readingTheBoardGuesses } from './reading-the-board-guesses.tsx';

const labs: Record<string, LabSpec | SharingLabSpec> = {
  log: { component: LogLab, relations: [movementOfWidth, movementOfThickness] },
  face: { component: FaceLab, relations: [] },
  'ring-cup': { component: RingCupLab, relations: [cupExact, cupAnyWidth, cupNarrow] },
  'faces-cup': facesCupLab,
};

export const lesson = { labs, guesses: readingTheBoardGuesses, model: modelOf(movement) };
export default islandOf(lesson);
