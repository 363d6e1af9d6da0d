/** Paper templates of all walls at full size, with bars to check the printer. */

import { useComputed } from '@preact/signals';
import { designOf } from '../../box/design/design.ts';
import { wholeModel } from '../../box/whole/index.ts';
import { rider } from '../../box/work/cautions.ts';
import { ScaleBars } from '../../figures/template/ScaleBars.tsx';
import { TemplateTile } from '../../figures/template/TemplateTile.tsx';
import { tilesOf } from '../../figures/template/tiles.ts';
import { wallTemplates } from '../../figures/template/wall-template.ts';
import { href } from '../kit/href.ts';
import { useStore } from '../kit/use-store.ts';

export default function Templates() {
  const store = useStore(wholeModel);
  const design = useComputed(() => designOf(store.values.value));
  const templates = wallTemplates(design.value);
  return (
    <article class="templates">
      <p class="screen-only buttons">
        <button type="button" onClick={() => window.print()}>
          print the templates
        </button>{' '}
        <a href={href('build-sheet/')}>build sheet</a> <a href={href('my-box/')}>change the box</a>
      </p>
      <h1>{design.value.box.name}: paper templates</h1>
      <p>
        Print at 100 %, “actual size”. Measure both bars before you trust the paper; a printer that shrinks to
        fit makes them short. Every template shows the inside face, lower edge down. Hatched: sawn away. Gray:
        a groove or rabbet. Dashed: on the far face, or to be cut later.
      </p>
      <ScaleBars />
      <svg width="0" height="0" aria-hidden="true" class="definitions">
        <defs>
          <pattern
            id="waste"
            width="2"
            height="2"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <line x1="0" y1="0" x2="0" y2="2" stroke="#000" stroke-width="0.3" />
          </pattern>
        </defs>
      </svg>
      {design.value.refusals.length > 0 && (
        <p class="message">
          This box cannot be built yet: see the build sheet. The templates show what can be drawn.
        </p>
      )}
      {templates.length === 0 && <p>There is nothing to draw: no room is left between the walls.</p>}
      {templates.flatMap((template) => {
        const windows = tilesOf(template.length, template.height);
        return windows.map((window, index) => (
          <figure key={`${template.name}${index}`} class="tile">
            <figcaption>
              {template.label}, inside face
              {windows.length > 1 &&
                `, piece ${index + 1} of ${windows.length}: cut on one dashed line, lay the rings on each other`}
            </figcaption>
            <TemplateTile of={template} window={window} index={index} />
          </figure>
        ));
      })}
      <p>Paper moves with the air as wood does: mark from it, then measure. {rider}</p>
    </article>
  );
}
