/** Saves each drawing of a part of the page as an SVG file. */
import { useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import type { Box } from '../../box/subjects/inputs.ts';
import { fileNameOf } from '../../notebook/files.ts';
import { download } from './download.ts';

/** A file name's part from a title: "Three views: front, left side" becomes "three-views". */
const shortOf = (title: string) =>
  title
    .split(/[:,(]/)[0]!
    .trim()
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-');

export function SaveDrawings({ box, within }: { box: Box; within: RefObject<HTMLElement> }) {
  const said = useSignal('');
  const save = async () => {
    const part = await import('../../notebook/svg-file.ts').catch(() => undefined);
    if (!part) {
      said.value =
        'A part of this page could not be fetched: nothing is saved. Try again when there is a network, or reload the page.';
      return;
    }
    const { svgFile } = part;
    const drawings = [...(within.current?.querySelectorAll<SVGSVGElement>('svg.drawing') ?? [])].filter(
      (drawing) => drawing.getClientRects().length > 0,
    );
    for (const drawing of drawings) {
      const title = drawing.querySelector('title')?.textContent ?? 'drawing';
      const name = fileNameOf({ ...box, name: `${box.name} ${shortOf(title)}` }, 'svg');
      download(name, 'image/svg+xml', svgFile(drawing));
    }
    said.value = drawings.length === 1 ? 'One drawing saved.' : `${drawings.length} drawings saved.`;
  };
  return (
    <p>
      <button type="button" class="quiet" onClick={save}>
        save the drawings as SVG
      </button>{' '}
      <span role="status">{said.value}</span>
    </p>
  );
}
