/** Drawings of what an exercise gives: they change with the numbers drawn, and no answer stands in them. */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { keyText } from '../../src/exercises/core/written.ts';
import { SlantGiven } from '../../src/figures/board/SlantGiven.tsx';
import { CornerGiven } from '../../src/figures/grooves/CornerGiven.tsx';
import { WebGiven } from '../../src/figures/grooves/WebGiven.tsx';
import { SawnGiven } from '../../src/figures/lid/SawnGiven.tsx';
import { systems, tasksOf } from '../exercises/seeds.ts';

const drawings = { e9: CornerGiven, e15: SlantGiven, e18: WebGiven, e21: SawnGiven } as const;
const texts = (html: string) => [...html.matchAll(/>([^<>]+)</g)].map(([, text]) => text!);

describe.each(Object.entries(drawings))('%s', (id, Figure) => {
  test.each(systems)('draws other numbers otherwise, and says none but those given, in %s', (system) => {
    const drawn = new Set<string>();
    for (const { values, given, lines } of tasksOf(id, system).slice(0, 100)) {
      const html = renderToString(<Figure values={values} system={system} />);
      drawn.add(html);
      const said = texts(html).join(' | ');
      for (const { gives } of lines) {
        if (gives.type === 'pick') continue;
        const answer = keyText(gives, system);
        // A size that is given may happen to be the answer.
        if (given.some(({ text }) => text === answer)) continue;
        expect(` ${said} `).not.toContain(` ${answer} `);
      }
      for (const number of said.match(/(\d+\s)?[\d./]+\s?(mm|in|°)/g) ?? [])
        expect(given.map(({ text }) => text.replace(/\s/g, ' '))).toContain(
          number.trim().replace(/\s/g, ' '),
        );
    }
    expect(drawn.size).toBeGreaterThan(4);
  });
});

test('the groove of the corner is drawn alike towards both walls, and stops before any finger is seen', () => {
  for (const { values } of tasksOf('e9', 'mm').slice(0, 100)) {
    const html = renderToString(<CornerGiven values={values} system="mm" />);
    const [, path] = /class="hidden-line" d="([^"]+)"/.exec(html)!;
    const lines = [...path!.matchAll(/M([\d.]+) [\d.]+H([\d.]+)/g)].map(([, from, to]) => [
      Number(from),
      Number(to),
    ]);
    expect(lines).toHaveLength(4);
    const corner = 180;
    for (const [from, to] of lines) expect(from! > corner || to! < corner).toBe(true);
    expect(corner - lines[0]![1]!).toBeCloseTo(lines[1]![0]! - corner, 6);
    expect(html).not.toContain('class="hole"');
  }
});
