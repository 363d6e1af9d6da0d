/** Every drawing of every kind of box with every joint: it is drawn, it is small, and it prints the design's own sizes. */
import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { type Design, designBox } from '../../../src/box/design/design.ts';
import { stockOf } from '../../../src/box/stock/stock.ts';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { BoardLayout } from '../../../src/figures/board/BoardLayout.tsx';
import { CornerSection } from '../../../src/figures/views/CornerSection.tsx';
import { Exploded } from '../../../src/figures/views/Exploded.tsx';
import { Isometric } from '../../../src/figures/views/Isometric.tsx';
import { LidOpenClosed } from '../../../src/figures/views/LidOpenClosed.tsx';
import { Views } from '../../../src/figures/views/Views.tsx';
import { format } from '../../../src/units/index.ts';
import { exampleBox } from '../../box/reckoned-box.ts';

const figures = {
  Views,
  Isometric: ({ design }: { design: Design }) => <Isometric design={design} grain />,
  Exploded,
  CornerSection,
  LidOpenClosed,
  BoardLayout: ({ design }: { design: Design }) => <BoardLayout design={design} stock={stockOf(design)} />,
};
/** A slider draws them again at each step: elements at most. The corner is two figures. */
const most = 120;

const kinds = ['sliding', 'lift-off', 'sawn'] as const;
const joints = ['finger', 'dovetail', 'mitre', 'keyed-mitre', 'splined-mitre', 'rabbet', 'butt'] as const;
const bottoms = [
  {},
  { bottom: 'plywood', bottomThickness: 4, bottomTongue: 4 },
  { bottom: 'plywood', bottomFit: 'glued', bottomSeat: 'rabbet', bottomThickness: 4, bottomLip: 1 },
] as const satisfies readonly Partial<Box>[];

describe.each(kinds)('a box of kind %s', (kind) => {
  describe.each(joints)('with corners of kind %s', (joint) => {
    test.each(Object.entries(figures))(
      '%s is drawn, with few elements, titled and described',
      (_, Figure) => {
        for (const bottom of bottoms) {
          const svg = renderToString(
            <Figure design={designBox({ ...exampleBox, ...bottom, kind, joint })} />,
          );
          expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
          expect(svg.match(/<[a-z]/g)!.length).toBeLessThan(most);
          expect(svg).toMatch(/<title[^>]*>[^<]{5,}<\/title><g[^>]*class="spoken"><text[^>]*>[^<]{20,}</);
        }
      },
    );

    test('the three views print the outside, the inside, the wall and the height of the lower part, all at one scale', () => {
      const design = designBox({ ...exampleBox, kind, joint });
      const { outsideLength, outsideWidth, outsideHeight, insideLength, insideWidth } = design.values;
      const { wall, lidHeight, lidLip, lidThickness } = design.box;
      const lower = outsideHeight - (kind === 'sliding' ? lidLip + lidThickness : lidHeight);
      const svg = renderToString(<Views design={design} />);
      const found = svg
        .split('class="dimension"')
        .slice(1)
        .map((text) => {
          // The two lines that carry the measured ends out of the object start at its ends.
          const [, x1, y1, x2, y2] = text
            .match(/d="M([\d.-]+) ([\d.-]+)L[\d. -]+M([\d.-]+) ([\d.-]+)L/)!
            .map(Number);
          const printed = text.match(/class="label mm[^>]*>(?:wall )?([^<]+)</)![1];
          return { drawn: Math.hypot(x2! - x1!, y2! - y1!), printed };
        });
      const expected = [outsideHeight, lower, outsideWidth, outsideLength, insideLength, insideWidth, wall];
      expect(found.map(({ printed }) => printed)).toEqual(
        expected.map((size) => format(size, 'length', { system: 'mm' })),
      );
      const scale = found[3]!.drawn / outsideLength;
      found.forEach(({ drawn }, index) => {
        // Path data have one decimal.
        expect(Math.abs(drawn - expected[index]! * scale)).toBeLessThan(0.25);
      });
      for (const size of [outsideLength, outsideWidth, outsideHeight])
        expect(svg).toContain(format(size, 'length', { system: 'inch' }));
    });
  });
});

test('of any box, however absurd, the drawings hold numbers only', () => {
  const any = Object.fromEntries(
    Object.entries(fields).flatMap(([name, field]): [string, fc.Arbitrary<unknown>][] => {
      if (field.type === 'number')
        return [[name, fc.double({ min: field.low, max: field.high, noNaN: true })]];
      if (field.type === 'choice') return [[name, fc.constantFrom(...Object.keys(field.options))]];
      return [];
    }),
  );
  fc.assert(
    fc.property(fc.record(any), (changes) => {
      const design = designBox({ ...exampleBox, ...changes } as Box);
      for (const Figure of Object.values(figures))
        expect(renderToString(<Figure design={design} />)).not.toMatch(/NaN|undefined|Infinity/);
    }),
    { numRuns: 40 },
  );
}, 60_000);
