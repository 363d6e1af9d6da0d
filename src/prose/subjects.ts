/** The subjects of the lessons by name: their labs and models, for checking what an author wrote. */

import { subject as air } from '../widgets/labs/air.tsx';
import { subject as board } from '../widgets/labs/board.tsx';
import { subject as finish } from '../widgets/labs/finish.tsx';
import { subject as grooves } from '../widgets/labs/grooves.tsx';
import { subject as joints } from '../widgets/labs/joints.tsx';
import { subject as movement } from '../widgets/labs/movement.tsx';
import { subject as proportion } from '../widgets/labs/proportion.tsx';
import { subject as walls } from '../widgets/labs/walls.tsx';
import { subject as year } from '../widgets/labs/year.tsx';
import type { Subject } from '../widgets/subject.tsx';

export const subjects: Readonly<Record<string, Subject>> = {
  proportion,
  walls,
  grooves,
  movement,
  joints,
  board,
  air,
  year,
  finish,
};
