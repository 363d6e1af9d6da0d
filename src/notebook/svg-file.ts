/**
 * A drawing of the page as an SVG file that needs nothing else: the styles that the page gives it are written into its
 * elements, the hatchings and arrowheads it points to come along, and what the reader does not see is left out.
 */

/** Properties that make the look of a drawing. */
const painted = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linejoin',
  'stroke-linecap',
  'opacity',
  'paint-order',
  'vector-effect',
  'font-family',
  'font-size',
  'font-weight',
  'text-anchor',
  'dominant-baseline',
  'marker-start',
  'marker-mid',
  'marker-end',
] as const;

/** What SVG starts from, so that only what differs is written. */
const initial: Partial<Record<(typeof painted)[number], readonly string[]>> = {
  'fill-opacity': ['1'],
  'stroke-dasharray': ['none'],
  'stroke-linejoin': ['miter'],
  'stroke-linecap': ['butt'],
  opacity: ['1'],
  'paint-order': ['normal'],
  'vector-effect': ['none'],
  'text-anchor': ['start'],
  'dominant-baseline': ['auto'],
  'marker-start': ['none'],
  'marker-mid': ['none'],
  'marker-end': ['none'],
};
const textOnly = ['font-family', 'font-size', 'font-weight', 'text-anchor', 'dominant-baseline'];

/** Ids of other elements that a style or attribute points to. */
const pointed = (text: string): string[] =>
  [...text.matchAll(/url\(["']?[^"')]*#([^"')]+)["']?\)/g)].map((found) => found[1]!);
/** Addresses as the browser resolves them, back to the id alone: the file must not name the page. */
const local = (text: string) => text.replace(/url\(["']?[^"')]*#([^"')]+)["']?\)/g, 'url(#$1)');

/** Writes the styles of `from` into `to`, element by element; takes out what is not shown. */
function freeze(from: Element, to: Element): void {
  const style = getComputedStyle(from);
  if (style.display === 'none') {
    to.remove();
    return;
  }
  if (from.classList.contains('spoken')) {
    const told = document.createElementNS('http://www.w3.org/2000/svg', 'desc');
    told.textContent =
      [...from.children].find((one) => getComputedStyle(one).display !== 'none')?.textContent ?? '';
    to.replaceWith(told);
    return;
  }
  const isText = from.localName === 'text' || from.localName === 'tspan';
  if (!['title', 'desc'].includes(from.localName))
    for (const property of painted) {
      if (textOnly.includes(property) && !isText) continue;
      const value = style.getPropertyValue(property);
      if (value && !initial[property]?.includes(value)) to.setAttribute(property, local(value));
    }
  to.removeAttribute('class');
  to.removeAttribute('style');
  const copies = [...to.children];
  for (const [index, child] of [...from.children].entries()) freeze(child, copies[index]!);
}

/** The text of the file; also everything in the page that the drawing points to. */
export function svgFile(drawing: SVGSVGElement): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  freeze(drawing, copy);
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  const view = drawing.viewBox.baseVal;
  if (!drawing.hasAttribute('width')) copy.setAttribute('width', String(view.width));
  if (!drawing.hasAttribute('height')) copy.setAttribute('height', String(view.height));
  const defs = document.createElementNS('http://www.w3.org/2000/svg', 'defs');
  const wanted = pointed(copy.outerHTML);
  const taken = new Set<string>();
  for (let id = wanted.pop(); id !== undefined; id = wanted.pop()) {
    const source = document.getElementById(id);
    if (taken.has(id) || !source || drawing.contains(source)) continue;
    taken.add(id);
    const definition = source.cloneNode(true) as Element;
    freeze(source, definition);
    definition.removeAttribute('display');
    wanted.push(...pointed(definition.outerHTML));
    defs.append(definition);
  }
  // The page's paper lies under it: by night its lines are light.
  const paper = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  for (const [name, value] of Object.entries({
    x: view.x,
    y: view.y,
    width: view.width,
    height: view.height,
  }))
    paper.setAttribute(name, String(value));
  paper.setAttribute('fill', getComputedStyle(document.documentElement).backgroundColor);
  copy.prepend(paper);
  if (defs.childElementCount > 0) copy.prepend(defs);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(copy)}\n`;
}
