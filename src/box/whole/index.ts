/** The subjects of the box, in the order of the work, and everything they say about a box together. */
import { verdictsOf } from '../core/verdict.ts';
import { air } from '../subjects/air/subject.ts';
import { board } from '../subjects/board/subject.ts';
import { bottom } from '../subjects/bottom/subject.ts';
import { finish } from '../subjects/finish/subject.ts';
import { glue } from '../subjects/glue/subject.ts';
import { grooves } from '../subjects/grooves/subject.ts';
import type { Box } from '../subjects/inputs.ts';
import { joints } from '../subjects/joints/subject.ts';
import { lid } from '../subjects/lid/subject.ts';
import { compute, type Model, modelOf } from '../subjects/model.ts';
import { movement } from '../subjects/movement/subject.ts';
import type { SubjectName } from '../subjects/names.ts';
import { proportion } from '../subjects/proportion/subject.ts';
import { size } from '../subjects/size/subject.ts';
import { square } from '../subjects/square/subject.ts';
import { walls } from '../subjects/walls/subject.ts';
import type { WoodFigures } from '../wood/figures.ts';

/** Those of the names that say something about a box; rules are judged in this order. */
export const subjects = {
  size,
  proportion,
  air,
  board,
  walls,
  bottom,
  movement,
  lid,
  joints,
  grooves,
  glue,
  square,
  finish,
} satisfies Partial<Record<SubjectName, unknown>>;

type Subjects = typeof subjects;
/** Names of the computed numbers. */
export type ResultName = { [S in keyof Subjects]: keyof Subjects[S]['results'] }[keyof Subjects];
/** Everything known about a box: what the reader decided, the figures of its wood, and all that follows. */
export type Values = Box & WoodFigures & Readonly<Record<ResultName, number>>;

/** All results and checks of all subjects. */
export const wholeModel: Model = modelOf(...Object.values(subjects));

/** Every number about a box; see `compute`. Runs at each movement of a slider. */
export const evaluate = (box: Box): Values => compute(wholeModel.results, box);

/** The verdicts of all rules that speak about this box, in the order of the work. */
export const verdicts = (values: Values) => verdictsOf(wholeModel.checks, values);
