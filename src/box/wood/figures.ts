/**
 * The figures of the chosen wood as plain numbers, so that every result can take them as it takes an input.
 * They follow from no relation: they are read from the tables. Where each comes from says `woodById(box.species)`.
 */
import type { Figure, Wood } from '../../calc/core/wood.ts';
import { woodById } from './woods.ts';

/** NaN where the tables have no figure for this wood. */
export interface WoodFigures {
  /** Oven-dry mass over volume at 12 % MC; imported woods over green volume. */
  readonly specificGravity: number;
  /** Bending, MPa at 12 % MC. */
  readonly modulusOfElasticity: number;
  /** Strength pulled across the grain, MPa at 12 % MC. */
  readonly tensionPerpendicular: number;
  /** Change of size per 1 % MC, as a fraction, across and along the rings. */
  readonly radialCoefficient: number;
  readonly tangentialCoefficient: number;
  /** Green to oven-dry, % of the green size. NaN too where the wood stops growing well below 30 % MC: the shrinkage method would mislead. */
  readonly radialShrinkage: number;
  readonly tangentialShrinkage: number;
}

const number = (figure: Figure | undefined) => figure?.value ?? Number.NaN;

/** The figures of the wood with this id; all NaN for an id that is not known. */
export function woodFigures(species: string): WoodFigures {
  const wood: Partial<Wood> = woodById(species) ?? {};
  const straightLine = !wood.lowFiberSaturation;
  return {
    specificGravity: number(wood.specificGravity),
    modulusOfElasticity: number(wood.modulusOfElasticity),
    tensionPerpendicular: number(wood.tensionPerpendicular),
    radialCoefficient: number(wood.radialCoefficient),
    tangentialCoefficient: number(wood.tangentialCoefficient),
    radialShrinkage: number(straightLine ? wood.radialShrinkage : undefined),
    tangentialShrinkage: number(straightLine ? wood.tangentialShrinkage : undefined),
  };
}
