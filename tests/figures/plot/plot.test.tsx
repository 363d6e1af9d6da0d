/** Plotting areas: where numbers lie, and what is drawn from that. Places are worked out by hand. */
import { scaleLinear } from 'd3-scale';
import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { numbersOnly } from '../../../src/build/numbers-only.ts';
import { MonthLetters, yearAxes } from '../../../src/figures/air/year-axis.tsx';
import { AxisLines, Ticks } from '../../../src/figures/plot/Axis.tsx';
import { across, axesOn, band, curve, evenly, Plot, Zone } from '../../../src/figures/plot/Plot.tsx';

const axes = axesOn({ left: 10, right: 110, top: 20, bottom: 70 }, [0, 10], [100, 200]);

test('a number lies between the edges as it lies between the ends of its stretch, and y grows upward', () => {
  expect([0, 5, 10].map((value) => axes.x(value))).toEqual([10, 60, 110]);
  expect([100, 150, 200].map((value) => axes.y(value))).toEqual([70, 45, 20]);
});

test('lines and bands go through their points', () => {
  expect(
    curve(axes, [
      [0, 100],
      [10, 200],
    ]),
  ).toBe('M10.0 70.0L110.0 20.0');
  expect(
    band(axes, [
      [0, 100, 150],
      [10, 100, 200],
    ]),
  ).toBe('M10.0 70.0L110.0 70.0L110.0 20.0L10.0 45.0Z');
  expect(across(axes, { x: [5], y: [150] })).toBe('M10 45H110M60 20V70');
  expect(evenly([2, 4], 4)).toEqual([2, 2.5, 3, 3.5, 4]);
});

test('a zone lies right whichever of its ends comes first, and reaches the edges where no ends are given', () => {
  const zone = '<rect class="usual" x="30" y="20" width="20" height="50"></rect>';
  expect(render(<Zone on={axes} x={[2, 4]} class="usual" />)).toBe(zone);
  expect(render(<Zone on={axes} x={[4, 2]} class="usual" />)).toBe(zone);
});

test('what leaves the area is cut off at its edges', () => {
  const drawn = render(
    <Plot on={axes}>
      <path d={curve(axes, [[0, 500]])} />
    </Plot>,
  );
  const [, clip] = /<clipPath id="([^"]+)"><rect x="10" y="20" width="100" height="50">/.exec(drawn) ?? [];
  expect(clip).toBeTruthy();
  expect(drawn).toContain(`<g clip-path="url(#${clip})"><path`);
});

test('ticks stand at their numbers, in both units where the kind has two', () => {
  const ticks = render(<Ticks on={axes} at={[150]} side="left" kind="length" />);
  expect(ticks).toMatch(/x="4" y="45" text-anchor="end".*class="label mm.*150.mm/);
  expect(ticks).toMatch(/class="label inch.*5.29\/32.in/);
  expect(render(<Ticks on={axes} at={[[5, 'half']]} side="below" />)).toMatch(/x="60" y="84".*>half</);
  expect(render(<AxisLines on={axes} />)).toContain('M10 20V70H110');
});

test('the middle of June lies near the middle of a year', () => {
  const year = yearAxes(0, 100, [0, 1]);
  const places = /x="([\d ]+)"/
    .exec(render(<MonthLetters on={year} />))![1]!
    .split(' ')
    .map(Number);
  expect(places).toHaveLength(12);
  expect(places[5]).toBeCloseTo(6 + (338 * 166) / 365, -1);
});

test('the browser mixes two numbers as d3 does', async () => {
  const { load } = numbersOnly() as unknown as { load: (id: string) => string };
  const code = load('\0numbers-only:d3-interpolate');
  const { interpolate } = (await import(`data:text/javascript,${encodeURIComponent(code)}`)) as {
    interpolate: (from: number, to: number) => (share: number) => number;
  };
  const number = fc.double({ noNaN: true, min: -1e6, max: 1e6 });
  fc.assert(
    fc.property(number, number, fc.double({ min: -1, max: 2, noNaN: true }), (from, to, share) => {
      // Outside the browser this is d3-scale as published.
      expect(interpolate(from, to)(share)).toBe(scaleLinear([0, 1], [from, to])(share));
    }),
  );
});
