/**
 * The box as it is seen. A page is built with its drawing, which stands while the bench wakes: it is worked out anew after
 * that, a little at a time, so that no touch waits for it. From then on it follows at once.
 */
import { effect, type ReadonlySignal, useComputed, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import { type BenchPicture, benchPicture, pictureInSteps } from '../../figures/box/bench-picture.ts';
import type { Bench } from './bench-state.ts';
import { inSteps } from './in-steps.ts';

/** What the places of the names follow from, without the picture. */
export type KnownPicture = Pick<BenchPicture, 'sheet' | 'spots'>;

export interface DrawnPicture {
  readonly picture: ReadonlySignal<BenchPicture>;
  /** Whether it is drawn already, or stands as the page was built. */
  readonly isDrawn: ReadonlySignal<boolean>;
}

interface Drawn {
  readonly of: Parameters<typeof benchPicture>;
  readonly picture: BenchPicture;
}

export function usePicture(design: ReadonlySignal<Design>, { pose, turn, tip }: Bench): DrawnPicture {
  const first = useRef<Drawn>();
  const isDrawn = useSignal(import.meta.env.SSR);
  const inputs = () => [design.value, pose.value, turn.value, tip.value] as const;
  const picture = useComputed(() => {
    const now = inputs();
    const known = first.current;
    return known?.of.every((one, at) => one === now[at]) ? known.picture : benchPicture(...now);
  });
  useEffect(
    () =>
      effect(() => {
        if (isDrawn.value) return undefined;
        const of: Drawn['of'] = [...inputs()];
        return inSteps(pictureInSteps(...of), (drawn) => {
          first.current = { of, picture: drawn };
          isDrawn.value = true;
        });
      }),
    [],
  );
  return { picture, isDrawn };
}

/** Whether the turn of what wakes after something else has come. */
export function useAfter(other: ReadonlySignal<boolean>): ReadonlySignal<boolean> {
  const isAwake = useSignal(import.meta.env.SSR);
  useEffect(
    () =>
      effect(() => {
        if (!other.value) return undefined;
        const timer = setTimeout(() => {
          isAwake.value = true;
        });
        return () => clearTimeout(timer);
      }),
    [],
  );
  return isAwake;
}
