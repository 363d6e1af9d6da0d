/**
 * How long a year of a box takes: three parts, daily output, settled, with the fit and the season of each.
 * Aim: 20 ms or less, so that a slider can drive it. Then what the lesson does at a slider: bottom and lid by waves,
 * each for three diffusion coefficients. Aim: 4 ms, a quarter of a frame, for a phone four times slower. Run: `npx node tests/bench/year.bench.ts` (Node 24).
 */

import { climates } from '../../src/calc/air/climates.ts';
import { diffusionCoefficient } from '../../src/calc/air/diffusion-coefficient.ts';
import { moistureThrough } from '../../src/calc/air/year.ts';
import { settledMean, wavesOf } from '../../src/calc/air/year-by-waves.ts';
import { isRefused, type Refused } from '../../src/calc/core/refusal.ts';
import { finishes, ROOM_SURFACE, surfaceUnderFinish } from '../../src/calc/finish/finish.ts';
import { buildSeason, fromDay } from '../../src/calc/movement/build-season.ts';
import { panelCourse } from '../../src/calc/movement/panel-year.ts';
import { settledYear } from '../reference/diffusion-year.ts';

function known<T>(answer: T | Refused): T {
  if (isRefused(answer)) throw new Error(answer.refused);
  return answer;
}

/** Lid, bottom and wall: thickness in mm, specific gravity, coats of varnish inside and out. */
const parts = [
  { name: 'lid 6 mm, varnish outside, bare inside', thickness: 6, gravity: 0.5, outside: 3, inside: 0 },
  { name: 'bottom 5 mm, bare', thickness: 5, gravity: 0.5, outside: 0, inside: 0 },
  { name: 'wall 10 mm, varnish on both', thickness: 10, gravity: 0.6, outside: 3, inside: 3 },
] as const;
const coats = (count: number) =>
  surfaceUnderFinish.compute({
    S_air: ROOM_SURFACE,
    r: finishes.find((each) => each.name === 'Urethane varnish' && each.coats === count)?.resistance ?? 0,
  });

function oneYear() {
  const moisture = known(moistureThrough(climates[0]!.year));
  for (const { thickness, gravity, outside, inside } of parts) {
    const front = { surface: coats(outside), moisture };
    const back = { surface: coats(inside), moisture };
    const diffusion = known(diffusionCoefficient(gravity, 8)).middle;
    const { mean } = known(settledYear({ thickness, diffusion, front, back }));
    const setup = { width: 100, figures: { coefficient: 0.0025, shrinkage: 7 }, play: 1, groove: 4 };
    known(panelCourse(setup, fromDay(mean, 100)));
    known(buildSeason(setup, mean));
  }
}

/** What `box/subjects/movement/panel-year.ts` does for one panel, without its memory of years it has seen. */
function byWaves() {
  const moisture = known(moistureThrough(climates[0]!.year));
  for (const { thickness, gravity } of parts.slice(0, 2)) {
    const waves = known(wavesOf(Float64Array.from({ length: 365 }, (_, day) => moisture(day))));
    const { low, middle, high } = known(diffusionCoefficient(gravity, 8));
    const setup = { width: 100, figures: { coefficient: 0.0025, shrinkage: 7 }, play: 1, groove: 4 };
    for (const diffusion of [low, middle, high]) {
      const slab = { thickness: 2 * thickness, diffusion, surface: ROOM_SURFACE };
      known(panelCourse(setup, fromDay(known(settledMean(waves, slab)), 100)));
    }
  }
}

function measure(what: string, run: () => void, aim: number) {
  const cold = performance.now();
  run();
  const first = performance.now() - cold;
  const times = Array.from({ length: 60 }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const [middle, slowest] = [times[30]!, times.at(-1)!];
  console.log(what);
  for (const [name, time] of Object.entries({ first, middle, slowest })) {
    console.log(
      `  ${name.padEnd(8)} ${time.toFixed(2)} ms, ${(time / aim).toFixed(2)} of the ${aim} ms aimed at`,
    );
  }
}

measure('three parts, stepped through', oneYear, 20);
measure('bottom and lid by waves, three coefficients each', byWaves, 4);
