/**
 * The reader's own box at the door to it: its drawing, its name, and how many things there are to look at. The page is
 * built with the example, whose drawing comes with it; what draws a box of the reader's own is fetched when there is one.
 */
import { type Signal, useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { isExample } from '../../box/subjects/example.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { currentBox, loadBox } from '../../notebook/current.ts';
import { href } from '../kit/href.ts';

/** What is said of a box. */
export interface Look {
  readonly picture: ComponentChildren;
  /** "two things to look at" */
  readonly says: string;
}

/** Looks at a box, unless the reader has changed it meanwhile. */
async function look(box: Box, into: Signal<Look | undefined>) {
  const part = await import('./look.tsx').catch(() => undefined);
  if (currentBox.peek() !== box) return;
  into.value = part?.lookAt(box) ?? {
    picture: undefined,
    says: 'what the rules say of it could not be fetched',
  };
}

/** @param children the drawing of the example */
export default function OwnBox({ children }: { children?: ComponentChildren }) {
  const own = useSignal<Box | undefined>(undefined);
  const found = useSignal<Look | undefined>(undefined);
  useEffect(() => {
    loadBox();
    return currentBox.subscribe((box) => {
      own.value = isExample(box) ? undefined : box;
      found.value = undefined;
      if (own.value) void look(own.value, found);
    });
  }, []);
  return (
    <>
      <div class="own-picture">{own.value ? found.value?.picture : children}</div>
      <p class="way">
        <a href={href('my-box/')}>{own.value ? own.value.name : 'Begin with the example'}</a>
        {own.value && found.value && `: ${found.value.says}`}
      </p>
    </>
  );
}
