/**
 * Woods in a form that reaches the browser small: column by column, numbers scaled to whole ones, one letter for
 * how and where each figure was found. `pack` runs in the build, `unpack` on the page.
 */
import type { Figure, Wood } from '../../calc/core/wood.ts';

/** Figures in packing order, each with the factor that makes its printed digits whole. */
const scales = {
  radialCoefficient: 1e5,
  tangentialCoefficient: 1e5,
  radialShrinkage: 10,
  tangentialShrinkage: 10,
  volumetricShrinkage: 10,
  specificGravity: 100,
  modulusOfElasticity: 0.01,
  tensionPerpendicular: 10,
  shearParallel: 10,
  sideHardness: 0.1,
} as const;
type Key = keyof typeof scales;
const keys = Object.keys(scales) as Key[];
const statuses = ['read', 'derived', 'from memory'] as const;
const groups = ['hardwood', 'softwood', 'imported'] as const;
const firstLetter = 'A'.charCodeAt(0);

export interface PackedWoods {
  /** Names joined by `|`; the same for table names and botanical names (often empty). */
  readonly names: string;
  readonly tableNames: string;
  readonly botanicalNames: string;
  /** One digit a wood: group + 3 if a commercial group + 6 if of low fiber saturation. */
  readonly kinds: string;
  /** Status digit and source text, joined by `|`. */
  readonly sources: string;
  /** By figure: scaled values joined by blanks, then the letters of their sources, both without the missing ones. */
  readonly figures: readonly (readonly [values: string, letters: string])[];
}

/** Permanent name from the name in running text: "black walnut" -> "black-walnut". */
export const woodId = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/-$/, '');

/** Packs; a figure with more digits than its scale keeps throws, so that no printed digit is lost. */
export function pack(woods: readonly Wood[]): PackedWoods {
  const sources: string[] = [];
  const letter = ({ status, source }: Figure) => {
    const text = statuses.indexOf(status) + source;
    if (!sources.includes(text)) sources.push(text);
    return String.fromCharCode(firstLetter + sources.indexOf(text));
  };
  const figures = keys.map((key): readonly [string, string] => {
    const values = woods.map((wood) => {
      const figure = wood[key];
      if (!figure) return '';
      const whole = Math.round(figure.value * scales[key]);
      if (Math.abs(whole / scales[key] - figure.value) > 1e-9 * figure.value)
        throw new Error(`${wood.name}: ${key} ${figure.value} has more digits than are packed`);
      return String(whole);
    });
    return [values.join(' '), woods.map((wood) => (wood[key] ? letter(wood[key]) : '')).join('')];
  });
  const join = (read: (wood: Wood) => string | undefined) => woods.map((wood) => read(wood) ?? '').join('|');
  return {
    names: join((wood) => wood.name),
    tableNames: join((wood) => wood.tableName),
    botanicalNames: join((wood) => wood.botanicalName),
    kinds: woods
      .map((wood) => groups.indexOf(wood.group) + (wood.isGroup ? 3 : 0) + (wood.lowFiberSaturation ? 6 : 0))
      .map((kind) => kind.toString(36))
      .join(''),
    sources: sources.join('|'),
    figures,
  };
}

/** The inverse of `pack`. */
export function unpack(packed: PackedWoods): readonly Wood[] {
  const names = packed.names.split('|');
  const tableNames = packed.tableNames.split('|');
  const botanicalNames = packed.botanicalNames.split('|');
  const sources = packed.sources.split('|');
  const columns = packed.figures.map(([values, letters], index) => {
    let next = 0;
    return values.split(' ').map((text): Figure | undefined => {
      if (!text) return undefined;
      const source = sources[letters.charCodeAt(next++) - firstLetter]!;
      // Through text, so that 274 becomes 0.00274 and not 0.0027400000000000002.
      const value = Number((Number(text) / scales[keys[index]!]).toPrecision(12));
      return { value, status: statuses[Number(source[0]) as 0]!, source: source.slice(1) };
    });
  });
  return names.map((name, index) => {
    const kind = Number.parseInt(packed.kinds[index]!, 36);
    return {
      id: woodId(name),
      name,
      tableName: tableNames[index]!,
      botanicalName: botanicalNames[index] || undefined,
      group: groups[(kind % 3) as 0]!,
      isGroup: kind % 6 >= 3,
      lowFiberSaturation: kind >= 6,
      ...(Object.fromEntries(keys.map((key, column) => [key, columns[column]![index]])) as Record<
        Key,
        Figure | undefined
      >),
    };
  });
}
