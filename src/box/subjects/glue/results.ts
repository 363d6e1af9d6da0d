/** The glue-up of this box: faces, films, force, and what the water of the glue does to its joints. */
import { ninetyTimeBehindFilm } from '../../../calc/air/film-times.ts';
import { ROOM_SURFACE } from '../../../calc/air/slab.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { filmInFingers, filmOfSpread, glueCube, liquidGlue } from '../../../calc/glue/film.ts';
import { clampForce, clampPressure, glueSpread } from '../../../calc/glue/glue.ts';
import { facesToGlue } from '../../../calc/glue/glue-up.ts';
import { sunkenLine, waterAtLine, waterLeft } from '../../../calc/glue/water.ts';
import { pieces } from '../../../calc/joints/finger-layout.ts';
import { type Result, type ResultTable, rowsOf } from '../../core/result.ts';
import type { WoodFigures } from '../../wood/figures.ts';
import type { AirResults } from '../air/results.ts';
import { diffusionOf, type WaitResults } from '../air/wait.ts';
import type { Box } from '../inputs.ts';
import type { JointsResults } from '../joints/results.ts';
import type { SizeResults } from '../size/results.ts';

export interface GlueResults {
  /** Faces that take glue at the four corners of the box, one of each pair. */
  readonly facesToGlue: number;
  /** Room for glue beside a finger, mm. */
  readonly glueFilm: number;
  /** Edge of a cube that holds the glue of the four corners, mm. */
  readonly glueCube: number;
  /** Force of the clamps on one corner by a glue maker's pressures, N: the least and the most. */
  readonly clampLeast: number;
  readonly clampMost: number;
  /** Days until nine tenths of the glue's water has left the walls. */
  readonly glueWaterWait: number;
  /** Moisture the glue has added at its line after a day and after a week, points. */
  readonly waterNextDay: number;
  readonly waterNextWeek: number;
  /** How deep the line sinks on each face if it is leveled then, mm. */
  readonly sunkNextDay: number;
  readonly sunkNextWeek: number;
}

export type GlueValues = Box &
  WoodFigures &
  SizeResults &
  AirResults &
  WaitResults &
  JointsResults &
  GlueResults;
type V = GlueValues;

const row = rowsOf<V>();

/** Faces at one corner: one of each pair that meets. */
const facesOf = (v: V): number => {
  switch (v.joint) {
    case 'finger':
      return pieces(v.jointedHeight, v.fingerWidth) - 1;
    case 'dovetail':
      return 2 * v.tailCount;
    case 'keyed-mitre':
      return 1 + 2 * v.keyCount;
    case 'splined-mitre':
      return 3;
    case 'rabbet':
      return 2;
    default:
      return 1;
  }
};

/** Faces of one corner that meet, all kinds of grain, mm²; keys and splines come on top. */
const areaOf = (v: V): number => {
  const end = v.jointedHeight * v.wall;
  if (v.joint === 'finger' || v.joint === 'dovetail') return v.longGrainArea + end;
  if (v.joint === 'rabbet') return 1.5 * end;
  return v.joint === 'butt' ? end : v.miterArea;
};

const middleSpread = (glueSpread.low + glueSpread.high) / 2;
const creep = (v: WoodFigures & AirResults): number => {
  const D = diffusionOf(v, v.moistureToday);
  return isRefused(D) ? Number.NaN : D.middle;
};
/** What goes into the moisture at a line of glue so many days old; D in mm²/day is the middle of what is known, or given. */
export const waterGiven = (v: WoodFigures & AirResults & Box, days: number, D = creep(v)) => ({
  s: middleSpread,
  k: liquidGlue.water,
  r: waterLeft(v.wall, D, ROOM_SURFACE, days),
  rho: 1000 * v.specificGravity,
  D,
  t: days,
});

const water = (label: string, days: number): Result<V> =>
  row(waterAtLine, (v) => waterGiven(v, days), {
    label,
    kind: 'points',
    digits: 2,
    rule: 'wait-for-the-glue-water',
  });
const sunk = (label: string, points: 'waterNextDay' | 'waterNextWeek'): Result<V> =>
  row(sunkenLine, (v) => ({ T: v.wall, C: v.tangentialCoefficient, dM: v[points] }), {
    label,
    kind: 'length',
    as: 'fine',
    rule: 'wait-for-the-glue-water',
  });
const force = (label: string, end: 'low' | 'high'): Result<V> =>
  row(clampForce, (v) => ({ p: clampPressure(v.specificGravity)[end], A: v.jointedHeight * v.wall }), {
    label,
    kind: 'force',
    digits: 0,
    rule: 'thin-even-film',
  });

export const glueResults: ResultTable<keyof GlueResults, V> = {
  facesToGlue: row(facesToGlue, (v) => ({ m: facesOf(v) }), {
    label: 'faces that take glue at four corners',
    kind: 'count',
    rule: 'dry-fit-in-half-the-open-time',
  }),
  glueFilm: row(filmInFingers, (v) => ({ c: v.fingerFit }), {
    label: 'room for glue beside a finger, dry',
    kind: 'length',
    as: 'fine',
    rule: 'thin-even-film',
    when: (v) => v.joint === 'finger',
  }),
  glueCube: row(
    glueCube,
    (v) => ({
      A: 4 * areaOf(v),
      w: filmOfSpread.compute({ s: middleSpread, rho: liquidGlue.density }),
    }),
    { label: 'glue of the four corners, as a cube with this edge', kind: 'length', rule: 'thin-even-film' },
  ),
  clampLeast: force('clamp force on a corner by a glue maker’s guide, least', 'low'),
  clampMost: force('clamp force on a corner by a glue maker’s guide, most', 'high'),
  glueWaterWait: row(ninetyTimeBehindFilm, (v) => ({ T: v.wall, D: creep(v), S: ROOM_SURFACE }), {
    label: 'days until nine tenths of the glue’s water has left the walls',
    kind: 'days',
    rule: 'wait-for-the-glue-water',
  }),
  waterNextDay: water('rise in moisture at the glue line after a day', 1),
  waterNextWeek: water('rise in moisture at the glue line after a week', 7),
  sunkNextDay: sunk('line sinks on each face, leveled after a day', 'waterNextDay'),
  sunkNextWeek: sunk('line sinks on each face, leveled after a week', 'waterNextWeek'),
};
