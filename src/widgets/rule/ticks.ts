/** The marks of a ruler for any kind of number: which divisions fit, and what stands at them. */
import { format, type Kind, type UnitSystem } from '../../units/index.ts';
import { kinds } from '../../units/kinds.ts';

/** Divisions of an inch, in the order of a rule; below them an inch is cut into tenths, as a caliper is. */
const inches = [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 3, 6, 12, 24, 48];

/** 1, 2, 5, 10, …, the finest of them at least so large. */
function decimal(least: number): number {
  const ten = 10 ** Math.floor(Math.log10(least));
  return ten * ([1, 2, 5].find((one) => one * ten >= least * (1 - 1e-9)) ?? 10);
}

export interface Tick {
  /** In the stored unit. */
  readonly at: number;
  readonly text: string;
}

/**
 * The numbered marks between two ends.
 * @param from, to in the stored unit of the kind
 * @param most how many numbers have room
 */
export function ticksOf(kind: Kind, system: UnitSystem, from: number, to: number, most: number): Tick[] {
  const { size, zero } = kinds[kind][system][0]!;
  const span = (to - from) / size / most;
  const step =
    kind === 'length' && system === 'inch'
      ? (inches.find((one) => one >= span && span > 1 / 64) ?? decimal(span))
      : kind === 'count'
        ? Math.max(1, decimal(span))
        : decimal(span);
  const first = Math.ceil((from / size + zero) / step - 1e-9);
  const last = Math.floor((to / size + zero) / step + 1e-9);
  const exact = kind === 'length' && system === 'inch' && step < 1 / 32 ? 1000 : 64;
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => {
    const at = ((first + i) * step - zero) * size;
    return {
      at,
      text: format(at, kind, {
        system,
        unit: false,
        ...(kind === 'length' && system === 'inch' ? { denominator: exact } : { digits: 3 }),
      }),
    };
  });
}
