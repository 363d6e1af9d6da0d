/** The picture of every step, by the name that the step gives. */
import type { Planned, StepPicture } from '../step.ts';
import { front, grooves, joint, jointTest, splines, stoppedGrooves } from './corner-pictures.ts';
import { firstEnds, miterTest, secondEnds } from './end-pictures.ts';
import { dryFit, glue, inside, keyStrip, keys } from './glue-pictures.ts';
import { finish, fitLid, hinges, last, level, sawLid } from './last-pictures.ts';
import { liner, linerStrip } from './liner-pictures.ts';
import { bottom, bottomThickness, grip, lid, lidPanel, panelFinish, pull } from './panel-pictures.ts';
import type { Picture } from './scene.ts';
import { air, boards, slices } from './stock-pictures.ts';
import { height, marks, stripGrooves, thickness } from './strip-pictures.ts';

const all = {
  air,
  boards,
  slices,
  thickness,
  marks,
  height,
  'strip grooves': stripGrooves,
  'miter test': miterTest,
  'first ends': firstEnds,
  'second ends': secondEnds,
  'joint test': jointTest,
  joint,
  splines,
  grooves,
  'stopped grooves': stoppedGrooves,
  front,
  'bottom thickness': bottomThickness,
  bottom,
  'lid panel': lidPanel,
  'panel finish': panelFinish,
  lid,
  grip,
  pull,
  inside,
  'dry fit': dryFit,
  glue,
  'key strip': keyStrip,
  keys,
  'saw lid': sawLid,
  level,
  finish,
  'fit lid': fitLid,
  'liner strip': linerStrip,
  liner,
  hinges,
  last,
} as const satisfies Readonly<Record<string, Picture>>;

export type PictureName = keyof typeof all;

/** What a step's picture shows of this box; `undefined` for a step that says why it has none. */
export const pictureOf = (picture: StepPicture, design: Planned): ReturnType<Picture> | undefined =>
  typeof picture === 'string' ? all[picture](design) : undefined;
