/** A wood and what is known about it: every figure carries how it is known and where it stands. */

/** One published figure. */
export interface Figure {
  readonly value: number;
  /** `read` in the table or in a quotation of it (`source` says which), `derived` here from a figure that was read, or `from memory`. */
  readonly status: 'read' | 'derived' | 'from memory';
  /** Publication, table and page; how it was read if not on its own page; what it was derived from. */
  readonly source: string;
}

/** One wood, or one commercial group of woods, of the published tables. */
export interface Wood {
  /** Permanent name for links and storage: "black-walnut". */
  readonly id: string;
  /** Name in running text: "black walnut". */
  readonly name: string;
  /** Name as the tables sort it: "Walnut, black". */
  readonly tableName: string;
  readonly botanicalName: string | undefined;
  readonly group: 'hardwood' | 'softwood' | 'imported';
  /** A commercial group such as red oak: an average over several species, never to be shown as one. */
  readonly isGroup: boolean;
  /** Rich in extractives: it stops taking up water in its cell walls well below 30 % MC, so the relations that assume 30 % do not hold. */
  readonly lowFiberSaturation: boolean;
  /** Change of size per 1 % MC, as a fraction of the size, across the rings. Valid 6 to 14 % MC. */
  readonly radialCoefficient: Figure | undefined;
  /** The same along the rings. */
  readonly tangentialCoefficient: Figure | undefined;
  /** Shrinkage from green to oven-dry, % of the green size. */
  readonly radialShrinkage: Figure | undefined;
  readonly tangentialShrinkage: Figure | undefined;
  readonly volumetricShrinkage: Figure | undefined;
  /** Oven-dry mass over volume at 12 % MC; imported woods: over green volume, and the source says so. */
  readonly specificGravity: Figure | undefined;
  /** Bending, MPa at 12 % MC. */
  readonly modulusOfElasticity: Figure | undefined;
  /** Strength pulled across the grain, MPa at 12 % MC. */
  readonly tensionPerpendicular: Figure | undefined;
  /** Shear strength along the grain, MPa at 12 % MC. */
  readonly shearParallel: Figure | undefined;
  /** Force, N, to press an 11.3 mm ball half into the side grain, at 12 % MC. */
  readonly sideHardness: Figure | undefined;
}
