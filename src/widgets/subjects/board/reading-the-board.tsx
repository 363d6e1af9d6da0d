/** Labs of the lesson on reading the board. Their numbers are their own; only the wood is that of the box. */
import { modelOf } from '../../../box/subjects/model.ts';
import { movement } from '../../../box/subjects/movement/subject.ts';
import { cupAnyWidth, cupExact, cupFromFaces, cupNarrow } from '../../../calc/board/cup.ts';
import { movementOfThickness, movementOfWidth } from '../../../calc/movement/movement.ts';
import type { OwnLabSpec } from '../../lesson/Lab.tsx';
import { islandOf } from '../../lesson/lesson.tsx';
import { FaceLab } from './FaceLab.tsx';
import { FacesCupLab } from './FacesCupLab.tsx';
import { LogLab } from './LogLab.tsx';
import { RingCupLab } from './RingCupLab.tsx';

const labs: Record<string, OwnLabSpec> = {
  log: { own: LogLab, relations: [movementOfWidth, movementOfThickness] },
  face: { own: FaceLab, relations: [] },
  'ring-cup': { own: RingCupLab, relations: [cupExact, cupAnyWidth, cupNarrow] },
  'faces-cup': { own: FacesCupLab, relations: [cupFromFaces, cupExact] },
};

export const lesson = { labs, model: modelOf(movement) };
export default islandOf(lesson);
