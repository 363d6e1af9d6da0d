/**
 * The whole box from its numbers: every part with its size and shape, every groove, every corner, and what cannot be
 * built. Pure; runs at each movement of a slider.
 */

import { type Box, inputsOf } from '../subjects/inputs.ts';
import type { Values } from '../whole/index.ts';
import { evaluate } from '../whole/index.ts';
import { frames } from './frames.ts';
import { groovesOf } from './grooves.ts';
import type { Corner } from './joints/joint.ts';
import { type Hinges, hingesOf, holeCut, type LidRun, lidRun, notchCut, notchOf, pullPart } from './lid.ts';
import { linerParts } from './liner.ts';
import { keyParts, splineParts } from './loose.ts';
import { massOf } from './mass.ts';
import { type FittedPanel, fitBottom, fitLid } from './panel-hold.ts';
import { bottomPart, lidPart } from './panels.ts';
import type { Groove, Part } from './part.ts';
import { type Plan, plan as planOf } from './plan.ts';
import type { Refusal } from './refusal.ts';
import { refusalsOf, unreadable } from './refusals/index.ts';
import { wallParts } from './walls.ts';

export type { Refusal };

export interface Design {
  readonly box: Box;
  readonly values: Values;
  /** What cannot be built, the first impossible thing first. Empty for a box that can. */
  readonly refusals: readonly Refusal[];
  /** Heights and thicknesses everything is built from; `undefined` where there is no room between four walls. */
  readonly plan: Plan | undefined;
  /** Empty without a plan. */
  readonly parts: readonly Part[];
  readonly grooves: readonly Groove[];
  /** Front and back corners of the box, and of a lift-off lid; the left and right corners of an end are alike. */
  readonly corners: readonly Corner[];
  readonly bottom: FittedPanel | undefined;
  readonly lid: FittedPanel | undefined;
  /** Sliding lids only. */
  readonly lidRun: LidRun | undefined;
  /** Sawn lids only: the kerf's band of heights in the box as glued up, and the hinges. */
  readonly saw: { readonly from: number; readonly to: number } | undefined;
  readonly hinges: Hinges | undefined;
  /** Clear room inside, within the liner, mm; its volume in mm³. */
  readonly inside: { readonly length: number; readonly width: number; readonly height: number } | undefined;
  readonly insideVolume: number | undefined;
  /** All parts together, g; plywood's density is from memory. */
  readonly mass: number | undefined;
}

/** Every number of the result is finite or absent, whatever the inputs; `values` alone may hold NaN, which prints as a dash. */
export function designOf(values: Values): Design {
  const box = inputsOf(values);
  const impossible = unreadable(box);
  const plan = impossible.length > 0 ? undefined : planOf(values);
  const refusals = impossible.length > 0 ? impossible : refusalsOf(values);
  if (!plan)
    return {
      box,
      values,
      refusals,
      plan,
      parts: [],
      grooves: [],
      corners: [],
      bottom: undefined,
      lid: undefined,
      lidRun: undefined,
      saw: undefined,
      hinges: undefined,
      inside: undefined,
      insideVolume: undefined,
      mass: undefined,
    };
  const all = frames(plan);
  const bottom = fitBottom(plan);
  const lid = fitLid(plan);
  const notch = notchOf(plan);
  const cut = all.map((frame) => ({ frame, grooves: groovesOf(plan, frame) }));
  const parts = [
    ...cut.flatMap(({ frame, grooves }) => wallParts(plan, frame, grooves)),
    bottomPart(plan, bottom),
    lidPart(plan, lid, notch ? notchCut(plan, notch) : holeCut(plan)),
    pullPart(plan, lid),
    ...linerParts(plan),
    ...keyParts(plan, all),
    ...splineParts(plan, all),
  ].filter((part) => part !== undefined);
  const inside = clearInside(plan);
  return {
    box,
    values,
    refusals,
    plan,
    parts,
    grooves: cut.flatMap(({ grooves }) => grooves.map(({ groove }) => groove)),
    corners: all.flatMap(({ corners }) => [corners.front, corners.back]),
    bottom,
    lid,
    lidRun: values.kind === 'sliding' ? lidRun(plan, lid) : undefined,
    saw: values.kind === 'sawn' ? { from: plan.rim, to: plan.rim + plan.sawn } : undefined,
    hinges: hingesOf(plan),
    inside,
    insideVolume: inside && inside.length * inside.width * inside.height,
    mass: massOf(plan, parts),
  };
}

function clearInside({ floor, lidUnder, values }: Plan) {
  const clear = { length: values.clearLength, width: values.clearWidth, height: lidUnder - floor };
  return clear.length > 0 && clear.width > 0 && clear.height > 0 ? clear : undefined;
}

/** The whole box from its inputs alone, where its numbers are not known yet. */
export const designBox = (box: Box): Design => designOf(evaluate(box));
