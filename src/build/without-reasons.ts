/**
 * Vite plugin: the browser's code carries relations without their words. Titles, expressions, sources, limits and names
 * of symbols are for pages while they are built, and for `relations-….json`, which a page fetches when a reason is opened.
 * It saves about a third of the calculation's size. Files in `src/calc` only, and only the client's build.
 */
import type { Plugin } from 'vite';

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value;

/** Every node of a syntax tree, parents first. */
function* nodesOf(node: Node): Generator<Node> {
  yield node;
  for (const value of Object.values(node))
    for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) yield* nodesOf(child);
}

/** An object that holds these keys is part of a relation; its words are the strings under the other keys. */
const shapes: readonly { readonly has: readonly string[]; readonly words: readonly string[] }[] = [
  { has: ['evidence'], words: ['title', 'expression', 'source', 'limits'] },
  { has: ['unit', 'range'], words: ['name', 'tex'] },
  { has: ['symbol', 'unit'], words: ['name', 'tex'] },
];

export function withoutReasons(): Plugin {
  return {
    name: 'without-reasons',
    enforce: 'post',
    applyToEnvironment: ({ name }) => name === 'client',
    transform(code, id) {
      if (!/[\\/]src[\\/]calc[\\/][\w-]+[\\/][\w-]+\.ts$/.test(id)) return undefined;
      const cuts: [number, number][] = [];
      for (const node of nodesOf(this.parse(code) as unknown as Node)) {
        if (node.type !== 'ObjectExpression') continue;
        const properties = (node.properties as Node[]).filter(({ type }) => type === 'Property');
        const nameOf = (property: Node) =>
          String((property.key as Node).name ?? (property.key as Node).value);
        const names = properties.map(nameOf);
        const shape = shapes.find(({ has }) => has.every((key) => names.includes(key)));
        if (!shape) continue;
        for (const property of properties) {
          const value = property.value as Node;
          const isText =
            value.type === 'TemplateLiteral' || (value.type === 'Literal' && typeof value.value === 'string');
          if (isText && shape.words.includes(nameOf(property))) cuts.push([value.start, value.end]);
        }
      }
      let text = code;
      for (const [start, end] of cuts.sort((a, b) => b[0] - a[0]))
        text = `${text.slice(0, start)}""${text.slice(end)}`;
      return cuts.length > 0 ? { code: text, map: null } : undefined;
    },
  };
}
