/** The size of an element in px, so that a drawing can be laid out for it. */
import { type ReadonlySignal, useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** @param first what a page is built with */
export function useSize(first: Size): { ref: RefObject<HTMLDivElement>; size: ReadonlySignal<Size> } {
  const ref = useRef<HTMLDivElement>(null);
  const size = useSignal(first);
  useEffect(() => {
    const element = ref.current;
    if (!element) return undefined;
    const watcher = new ResizeObserver(([entry]) => {
      const { width, height } = entry!.contentRect;
      if (width > 0 && height > 0) size.value = { width: Math.round(width), height: Math.round(height) };
    });
    watcher.observe(element);
    return () => watcher.disconnect();
  }, []);
  return { ref, size };
}
