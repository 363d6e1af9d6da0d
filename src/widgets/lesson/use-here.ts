/** Which section of the page the reader is at: the last one whose top has passed the upper part of the screen. */
import { type Signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

/** How far down the screen a section's top counts as passed. */
const line = 0.38;

export function useHere(ids: readonly string[]): Signal<string | undefined> {
  const here = useSignal<string | undefined>(undefined);
  useEffect(() => {
    const sections = ids.flatMap((id) => document.getElementById(id) ?? []);
    const look = () => {
      const passed = sections.filter((section) => section.getBoundingClientRect().top <= innerHeight * line);
      here.value = (passed.at(-1) ?? sections[0])?.id;
    };
    // Told only when a section's top crosses the line, not with every scroll.
    const watcher = new IntersectionObserver(look, {
      rootMargin: `0px 0px ${Math.round(line * 100) - 100}% 0px`,
    });
    for (const section of sections) watcher.observe(section);
    return () => watcher.disconnect();
  }, []);
  return here;
}
