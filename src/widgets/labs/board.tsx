/** Labs of the lesson on reading the board. Their numbers are their own; only the wood is that of the box. */
import { movementModel } from '../../box/models/movement.ts';
import { cupAnyWidth, cupExact, cupFromFaces, cupNarrow } from '../../calc/cup.ts';
import { movementOfThickness, movementOfWidth } from '../../calc/movement.ts';
import { FaceLab } from '../board/FaceLab.tsx';
import { FacesCupLab } from '../board/FacesCupLab.tsx';
import { LogLab } from '../board/LogLab.tsx';
import { RingCupLab } from '../board/RingCupLab.tsx';
import type { OwnLabSpec } from '../Lab.tsx';
import { islandOf } from '../subject.tsx';

const labs: Record<string, OwnLabSpec> = {
  log: { own: LogLab, relations: [movementOfWidth, movementOfThickness] },
  face: { own: FaceLab, relations: [] },
  'ring-cup': { own: RingCupLab, relations: [cupExact, cupAnyWidth, cupNarrow] },
  'faces-cup': { own: FacesCupLab, relations: [cupFromFaces, cupExact] },
};

export const subject = { labs, model: movementModel };
export default islandOf(subject);
