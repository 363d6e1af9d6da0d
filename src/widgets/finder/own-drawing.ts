/** What draws the reader's own box on the page of all rules. Fetched once the page's drawing of the example will not do. */
import { designOf } from '../../box/design/design.ts';
import type { Values } from '../../box/whole/index.ts';
import { partAt } from '../../figures/box/hit.ts';
import { type Named, NamedBox, namedOf } from '../../figures/box/NamedBox.tsx';

export const ownDrawing = {
  namedOf: (values: Values): Named | undefined => namedOf(designOf(values)),
  NamedBox,
  partAt,
};
