/** The part whose rules are listed: chosen by hand, or named by a link. A link to a stage of the work opens its card. */
import { type Signal, useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { PartOfRules } from './rule-lines.ts';

interface Chosen {
  /** Anchor of the part. */
  readonly chosen: Signal<string>;
  /** The drawing with the list beside it. */
  readonly place: RefObject<HTMLDivElement>;
  readonly choose: (anchor: string) => void;
}

export function useChosen(parts: readonly PartOfRules[], first: string): Chosen {
  const chosen = useSignal(first);
  const place = useRef<HTMLDivElement>(null);
  const isPart = (name: string) => parts.some(({ anchor }) => anchor === name);
  useEffect(() => {
    const follow = () => {
      const name = location.hash.slice(1);
      if (isPart(name)) {
        chosen.value = name;
        place.current?.scrollIntoView();
        return;
      }
      const card = (name ? document.getElementById(name) : null)?.closest('details');
      if (!card) return;
      card.open = true;
      card.scrollIntoView();
    };
    follow();
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  return {
    chosen,
    place,
    choose: (anchor) => {
      chosen.value = anchor;
      // Who comes back from a rule finds the part again; an address that holds a box keeps it.
      if (!location.hash || document.getElementById(location.hash.slice(1)))
        history.replaceState(history.state, '', `#${anchor}`);
    },
  };
}
