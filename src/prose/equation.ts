/**
 * Equations at build time: a relation's mathjs expression becomes LaTeX, then MathML. Nothing of this reaches a browser.
 */
import { isSymbolNode, type MathNode, parse } from 'mathjs';
import temml from 'temml';
import type { Card } from '../calc/core/relation.ts';

/** MathML of a relation. */
export interface Equation {
  readonly symbols: string;
  readonly numbers: string;
}

const made = new Map<string, Equation>();

/** LaTeX of a symbol: the relation's own, else Greek letters and subscripts from its mathjs name. */
function texOf(name: string, own: string | undefined): string {
  if (own) return own;
  const [head = '', ...tail] = name.split('_');
  const letter = (part: string) =>
    /^(alpha|beta|gamma|delta|epsilon|eta|theta|lambda|mu|nu|pi|rho|sigma|tau|phi|psi|omega|Delta|Phi)$/.test(
      part,
    )
      ? `\\${part}`
      : part.length > 1
        ? `\\mathrm{${part}}`
        : part;
  return tail.length ? `${letter(head)}_{${tail.map(letter).join('\\,')}}` : letter(head);
}

function toTex(of: Card, implicit: 'show' | 'hide', symbol: (name: string) => string): string {
  return parse(of.expression).toTex({
    parenthesis: 'auto',
    implicit,
    handler: (node: MathNode) =>
      // The blank ends a command before it: "\\cdot H".
      isSymbolNode(node) && node.name in of.inputs ? ` ${symbol(node.name)}` : undefined,
  });
}

/**
 * MathML of a relation: `symbols` reads "r = L / W"; `numbers` reads "r = ■ / ■" with a place
 * `<mn class="n-L">` for each number, which the page fills with the reader's own.
 */
export function equationOf(of: Card): Equation {
  const known = made.get(of.id);
  if (known) return known;
  const result = texOf(of.result.symbol, of.result.tex);
  const math = (tex: string) =>
    temml.renderToString(`${result} = ${tex}`, { displayMode: true, throwOnError: true });
  const equation = {
    symbols: math(toTex(of, 'hide', (name) => texOf(name, of.inputs[name]?.tex))),
    // A marked number stands for each symbol until Temml has set it; numbers side by side need their dot.
    numbers: Object.keys(of.inputs).reduce(
      (mathml, name, index) => mathml.replaceAll(`<mn>${placeOf(index)}</mn>`, `<mn class="n-${name}"></mn>`),
      math(toTex(of, 'show', (name) => placeOf(Object.keys(of.inputs).indexOf(name)))),
    ),
  };
  made.set(of.id, equation);
  return equation;
}

/** A number that no expression contains, to mark the place of the input with this index. */
const placeOf = (index: number) => String(770077000 + index);
