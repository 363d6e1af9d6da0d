/**
 * What the box as designed should measure in given air, and how far measurements lie from it. The wood is taken to have
 * settled in that air, or to have the moisture a meter read. Nothing of it is put into the box.
 * Over 150 lines: what can be measured, what it should be and what it shows go by one table.
 */
import { moistureInAir } from '../../../calc/air/moisture.ts';
import { type Line, lineThrough, slopeWithin } from '../../../calc/core/line.ts';
import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import { plywoodCoefficient } from '../../../calc/movement/lengthwise.ts';
import { movementSeen } from '../../../calc/movement/seen-movement.ts';
import { changeOf, panelOf, playAt } from './panel-state.ts';
import type { MovementValues, PanelName } from './results.ts';

type V = MovementValues;

export type Measurable = 'lid-play' | 'bottom-play' | 'lid-width' | 'bottom-width' | 'wall-height';

interface Spec {
  readonly label: string;
  /** Where to hold the tool. */
  readonly how: string;
  /** Whether this box has it. */
  readonly when: (v: V) => boolean;
  readonly part: PanelName | 'wall';
  /** Play becomes less where the wood grows. */
  readonly isPlay: boolean;
}

const solidLid = (v: V) => v.lid !== 'plywood';
const slides = (v: V) => v.kind === 'sliding';
const floats = (v: V) => v.bottomFit === 'floating';
const solidBottom = (v: V) => v.bottom !== 'plywood';

/** What can be measured on a box, by the name under which it is kept. */
export const measurables: Readonly<Record<Measurable, Spec>> = {
  'lid-play': {
    label: 'play of the lid, both sides together',
    how: 'Push the lid to one side and measure what is free at the other.',
    when: slides,
    part: 'lid',
    isPlay: true,
  },
  'bottom-play': {
    label: 'play of the bottom, both sides together',
    how: 'Push the bottom to one side. Measure how far it goes to the other.',
    when: (v) => floats(v) && solidBottom(v),
    part: 'bottom',
    isPlay: true,
  },
  'lid-width': {
    label: 'width of the lid’s panel',
    how: 'Across the grain, with rule or caliper, always at the same mark.',
    when: solidLid,
    part: 'lid',
    isPlay: false,
  },
  'bottom-width': {
    label: 'width of the bottom',
    how: 'Across the grain, before it is glued in, or through the open end of its groove.',
    when: solidBottom,
    part: 'bottom',
    isPlay: false,
  },
  'wall-height': {
    label: 'height of the walls, from foot to rim',
    how: 'At a corner, always the same one, without lid and bottom.',
    when: () => true,
    part: 'wall',
    isPlay: false,
  },
};

export const isMeasurable = (name: string): name is Measurable => Object.hasOwn(measurables, name);

/** Size across the grain that moves, mm, with the wood as it is on the day of building. */
const sizeOf = ({ part }: Spec, v: V): number => (part === 'wall' ? v.outsideHeight : panelOf(v, part).width);

/** Movement per point by the table, as a fraction of the size, 6 to 14 % MC; NaN where none is known. */
export const tableMovement = (what: Measurable, v: V): number => {
  const { part } = measurables[what];
  if (part !== 'wall' && v[part] === 'plywood') return plywoodCoefficient.across;
  const found = changeOf(v, 1, 8, 9);
  return isRefused(found) ? Number.NaN : found.change;
};

/** Air of the day, °C and % relative humidity, or what a meter reads of the wood, % MC. */
export interface Air {
  readonly temperature?: number | undefined;
  readonly humidity?: number | undefined;
  readonly meter?: number | undefined;
}

/** Moisture of the wood, %, by the meter where one was used, else what that air brings it to. */
export function moistureBy({ temperature, humidity, meter }: Air): { readonly moisture: number } | Refused {
  if (meter !== undefined) return { moisture: meter };
  return temperature === undefined || humidity === undefined
    ? { refused: 'Neither the air of that day nor a meter’s reading is known.' }
    : moistureInAir(temperature, humidity);
}

/** What the box as designed should measure at `moisture` % MC, mm. A play below zero is none. Refuses where no figure holds. */
export function predicted(what: Measurable, v: V, moisture: number): { readonly value: number } | Refused {
  const spec = measurables[what];
  if (spec.isPlay && spec.part !== 'wall') {
    const play = playAt(v, spec.part, moisture);
    return Number.isNaN(play)
      ? { refused: 'No movement figure holds for this wood at that moisture.' }
      : { value: Math.max(0, play) };
  }
  const size = sizeOf(spec, v);
  if (spec.part !== 'wall' && v[spec.part] === 'plywood')
    return { value: size * (1 + plywoodCoefficient.across * (moisture - v.moistureToday)) };
  const found = changeOf(v, size, v.moistureToday, moisture);
  return isRefused(found) ? found : { value: size + found.change };
}

/** One measurement with what was predicted for it; mm and % MC. */
export interface Met {
  readonly moisture: number;
  readonly measured: number;
  readonly predicted: number;
}

/** Levels of the rubric for a gap said and a gap measured, mm (`content/class/rubric.yaml`: common practice). */
export const rubricLevels = [0.2, 0.4, 0.8] as const;

/** The rubric's level of a difference, or undefined past the last. */
export const levelOf = (difference: number): (typeof rubricLevels)[number] | undefined =>
  // A hair for arithmetic: 1.2 − 1 is a little less than 0.2.
  rubricLevels.find((level) => Math.abs(difference) <= level + 1e-9);

/** What several measurements say of the movement. */
export interface Seen {
  /** Movement per point, as a fraction of the size, and how far it may lie off. */
  readonly perPoint: number;
  readonly within: number;
  /** The same by the table. */
  readonly table: number;
  readonly says: 'as the table' | 'less' | 'more' | 'nothing';
  readonly line: Line;
}

/** Fewer points of moisture between the driest and the dampest tell nothing of movement. */
const leastSpread = 1;

/**
 * The movement seen in measurements of one thing, against the table's.
 * @param reading what the tool reads to, mm: the largest of them
 * @returns a refusal where the moistures lie too near each other
 */
export function seenIn(what: Measurable, v: V, met: readonly Met[], reading: number): Seen | Refused {
  const moistures = met.map(({ moisture }) => moisture);
  if (met.length < 2 || Math.max(...moistures) - Math.min(...moistures) < leastSpread)
    return {
      refused:
        'The air was nearly the same each time, so these numbers cannot tell how much the wood moves. Measure again in another season.',
    };
  const spec = measurables[what];
  // A play shrinks as the wood grows.
  const points = met.map(({ moisture, measured }) => [moisture, spec.isPlay ? -measured : measured] as const);
  const line = lineThrough(points)!;
  const size = sizeOf(spec, v);
  const perPoint = movementSeen.compute({ b: line.slope, W: size });
  const within = slopeWithin(points, line, reading) / size;
  const table = tableMovement(what, v);
  const says = !(within < table)
    ? 'nothing'
    : Math.abs(perPoint - table) <= within
      ? 'as the table'
      : perPoint < table
        ? 'less'
        : 'more';
  return { perPoint, within, table, says, line };
}
