/** Every relation of the calculation module, by subject. Tests, equations and rule files find relations here. */
import * as acclimatize from './acclimatize.ts';
import * as air from './air.ts';
import * as bottom from './bottom.ts';
import * as cup from './cup.ts';
import * as diffusionSeries from './diffusion-series.ts';
import * as dividers from './dividers.ts';
import * as dovetail from './dovetail.ts';
import * as filmTimes from './film-times.ts';
import * as fingerJig from './finger-jig.ts';
import * as fingerLayout from './finger-layout.ts';
import * as finish from './finish.ts';
import * as finishFilm from './finish-film.ts';
import * as glue from './glue.ts';
import * as glueArea from './glue-area.ts';
import * as grooveCorner from './groove-corner.ts';
import * as grooveWeb from './groove-web.ts';
import * as grooves from './grooves.ts';
import * as heights from './heights.ts';
import * as insideRatio from './inside-ratio.ts';
import * as jointFit from './joint-fit.ts';
import * as lengthwise from './lengthwise.ts';
import * as lidRun from './lid-run.ts';
import * as moisture from './moisture.ts';
import * as movement from './movement.ts';
import * as panel from './panel.ts';
import * as panelPlay from './panel-play.ts';
import * as proportion from './proportion.ts';
import type { Relation } from './relation.ts';
import * as sidePush from './side-push.ts';
import * as sizes from './sizes.ts';
import * as squareness from './squareness.ts';
import * as stock from './stock.ts';
import * as walls from './walls.ts';
import * as woodMass from './wood-mass.ts';

const subjects = [
  acclimatize,
  air,
  bottom,
  cup,
  diffusionSeries,
  dividers,
  dovetail,
  fingerJig,
  fingerLayout,
  finish,
  finishFilm,
  filmTimes,
  grooveCorner,
  grooveWeb,
  glue,
  glueArea,
  grooves,
  heights,
  insideRatio,
  jointFit,
  lengthwise,
  lidRun,
  moisture,
  movement,
  panel,
  panelPlay,
  proportion,
  sidePush,
  sizes,
  squareness,
  stock,
  walls,
  woodMass,
];

const isRelation = (value: unknown): value is Relation =>
  typeof value === 'object' && value !== null && 'expression' in value && 'compute' in value;

/** All relations by id. */
export const relations: ReadonlyMap<string, Relation> = new Map(
  subjects.flatMap((subject) => Object.values(subject).filter(isRelation)).map((found) => [found.id, found]),
);
