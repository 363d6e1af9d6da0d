/**
 * Stiffnesses of a few woods along, across and in shear, for a bottom of the lesson. Of the tables in content/data
 * (Wood Handbook 2021, Tables 5-1, 5-2 and 5-3a) only these figures go to a browser; a test holds them against the files.
 * Ratios are to the stiffness along the grain; `bending` in MPa, specific gravity at 12 % moisture.
 */
import { stiffnessAlongGrain } from '../walls/side-push.ts';
import type { Panel } from './bottom.ts';

/** A wood with figures both for rings that lie flat in the panel and for rings that stand upright. */
export interface PanelWood {
  readonly name: string;
  /** Its name in the tables. */
  readonly species: string;
  readonly gravity: number;
  readonly bending: number;
  readonly flat: { readonly across: number; readonly shear: number; readonly nu: number };
  readonly quarter: { readonly across: number; readonly shear: number; readonly nu: number };
}

export const panelWoods = {
  walnut: {
    name: 'walnut',
    species: 'Walnut, black',
    gravity: 0.55,
    bending: 11600,
    flat: { across: 0.056, shear: 0.062, nu: 0.632 },
    quarter: { across: 0.106, shear: 0.085, nu: 0.495 },
  },
  cherry: {
    name: 'cherry',
    species: 'Cherry, black',
    gravity: 0.5,
    bending: 10300,
    flat: { across: 0.086, shear: 0.097, nu: 0.428 },
    quarter: { across: 0.197, shear: 0.147, nu: 0.392 },
  },
  spruce: {
    name: 'Sitka spruce',
    species: 'Spruce, Sitka',
    gravity: 0.4,
    bending: 10800,
    flat: { across: 0.043, shear: 0.061, nu: 0.467 },
    quarter: { across: 0.078, shear: 0.064, nu: 0.372 },
  },
} as const satisfies Readonly<Record<string, PanelWood>>;

export type PanelWoodName = keyof typeof panelWoods;
/** How the rings lie in the panel. */
export type PanelCut = 'flat' | 'quarter';

/** A panel of this wood, cut and size (mm). At 12 % moisture a cubic meter weighs 1120 kg times the specific gravity. */
export function panelOf(name: PanelWoodName, cut: PanelCut, size: Pick<Panel, 'a' | 'b' | 'h'>): Panel {
  const { gravity, bending, [cut]: ratios } = panelWoods[name];
  const E_x = stiffnessAlongGrain.compute({ E_b: bending });
  return {
    ...size,
    rho: 1120 * gravity,
    E_x,
    E_y: ratios.across * E_x,
    G: ratios.shear * E_x,
    nu: ratios.nu,
  };
}
