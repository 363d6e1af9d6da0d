/** A lid after the air has changed: finished on one face or both, on an open box or a shut one, and how it bows meanwhile. */
import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { diffusionOf } from '../../../box/subjects/air/wait.ts';
import { finish } from '../../../box/subjects/finish/subject.ts';
import { modelOf } from '../../../box/subjects/model.ts';
import { moistureCourse } from '../../../calc/air/diffusion.ts';
import { SHUT_INSIDE } from '../../../calc/air/slab.ts';
import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import { outsideRange, work } from '../../../calc/core/working.ts';
import { finishes, ROOM_SURFACE, surfaceUnderFinish } from '../../../calc/finish/finish.ts';
import { cupFromFaces } from '../../../calc/movement/cup-faces.ts';
import { CupCourse } from '../../../figures/finish/CupCourse.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { Control } from '../../kit/Control.tsx';
import { RelationLine } from '../../kit/ResultLine.tsx';
import { useStore } from '../../kit/use-store.ts';
import { LabFrame } from '../../lesson/Lab.tsx';
import { OwnChoice } from '../../lesson/OwnNumber.tsx';
import { finishLabels, varnish } from './choice.ts';

const model = modelOf(finish);

/** Days a figure may show. */
const horizons = [14, 30, 60, 120, 240, 480] as const;
/** Points of moisture that count as no change of air. */
const SAME = 0.2;

/** Outer face minus inner face, in points by quarter or whole days, for the three ways a lid may be. */
function differences(thickness: number, diffusion: number, resistance: number, from: number, to: number) {
  const finished = surfaceUnderFinish.compute({ S_air: ROOM_SURFACE, r: resistance });
  // A shut lid is a slab of twice the thickness; a third of the way into its second half the cup has gone.
  const slow = (0.4 * thickness ** 2) / diffusion + (2 * thickness) / finished;
  const days = horizons.find((horizon) => horizon > slow) ?? 480;
  const every = days > 60 ? 1 : 0.25;
  const air = (surface: number) => ({ surface: surface * every, moisture: () => to });
  const course = (front: number, back: number | undefined) =>
    moistureCourse(
      {
        thickness,
        diffusion: diffusion * every,
        front: air(front),
        back: back === undefined ? SHUT_INSIDE : air(back),
      },
      from,
      days / every,
      0,
      { cells: 24, perDay: 1 },
    );
  const ways = [
    { word: 'open, finished outside only', course: course(finished, ROOM_SURFACE) },
    { word: 'shut, bare', course: course(ROOM_SURFACE, undefined) },
    { word: 'shut, finished outside', course: course(finished, undefined) },
  ];
  const bad = ways.map((way) => way.course).find(isRefused);
  if (bad) return bad;
  return {
    every,
    ways: ways.map((way) => ({ word: way.word, points: isRefused(way.course) ? [] : way.course.difference })),
  };
}

export function FacesLab() {
  const store = useStore(model);
  const v = store.values.value;
  const units = store.units.value;
  const finish = useSignal(varnish);
  const [from, to] = [v.moistureToday, v.moistureDamp];
  const { resistance } = finishes[finish.value]!;
  const D = diffusionOf(v, (from + to) / 2);
  const found: ReturnType<typeof differences> | Refused = useMemo(
    () => (isRefused(D) ? D : differences(v.lidThickness, D.middle, resistance, from, to)),
    [v.lidThickness, v.specificGravity, resistance, from, to],
  );
  const C = v.movementUp;
  const cup = (dM: number) => cupFromFaces.compute({ C, dM, w: v.lidWidth, T: v.lidThickness });
  const worst = (depth: ArrayLike<number>) => Math.max(...Array.from(depth, Math.abs));
  const courses = isRefused(found)
    ? []
    : found.ways.map(({ word, points }) => ({
        word,
        depth: Float64Array.from(points, cup),
        worst: Math.abs(cup(worst(points))),
      }));
  const mostPoints = isRefused(found) ? 0 : Math.max(...found.ways.map(({ points }) => worst(points)));
  const tooFar = outsideRange(cupFromFaces, { C, dM: mostPoints, w: v.lidWidth, T: v.lidThickness });
  const message = isRefused(found)
    ? found.refused
    : Number.isNaN(C)
      ? 'No movement figure is known for this wood in this air.'
      : to - from < SAME
        ? 'Today is already the dampest day of this air: nothing is to come.'
        : tooFar
          ? 'This lid would bow too far for the formula, which takes the bow as shallow.'
          : undefined;
  return (
    <LabFrame
      within={store.ref}
      title="One face or both"
      picture={
        message || isRefused(found) ? (
          <p class="says message" role="status">
            {message}
          </p>
        ) : (
          <>
            <CupCourse every={found.every} courses={courses} />
            <p class="says">
              The air turns from today’s to the dampest. With the same finish on both faces of an open box the
              lid stays flat. Finished outside only it bows by{' '}
              <Quantity value={courses[0]!.worst} kind="length" digits={2} /> before it comes back. On a shut
              box a bare lid bows the other way by{' '}
              <Quantity value={courses[1]!.worst} kind="length" digits={2} />, one finished outside by{' '}
              <Quantity value={courses[2]!.worst} kind="length" digits={2} />.
            </p>
          </>
        )
      }
      controls={
        <>
          <Control name="lidThickness" store={store} />
          <OwnChoice label="finish" options={finishLabels} of={finish} />
          <Control name="humidityDamp" store={store} />
          <details class="more">
            <summary>more to change</summary>
            <Control name="humidityToday" store={store} />
            <Control name="ringAngle" store={store} />
            <Control name="species" store={store} />
          </details>
        </>
      }
      results={
        <RelationLine
          label="cup for each point between the faces"
          kind="length"
          digits={2}
          denominator={64}
          working={work(cupFromFaces, { C, dM: 1, w: v.lidWidth, T: v.lidThickness })}
          units={units}
          rule="both-faces-or-cup-for-days"
        />
      }
    />
  );
}
