/** Which part is on the bench: chosen by hand, named by a link, or the one with the worst warning; and where the reader goes on. */
import { useEffect, useRef } from 'preact/hooks';
import { useLead } from '../kit/use-lead.ts';
import { type Bench, choosePart } from './bench-state.ts';
import { leadToInput } from './lead-to-input.ts';
import { type PartOfBench, partOfInput, partsOfBench } from './parts.ts';

interface Places {
  /** Whether the page is laid out for a phone. */
  readonly isNarrow: () => boolean;
  /** The part to begin with where no link names one. */
  readonly begin: () => PartOfBench | undefined;
}

export function usePart(bench: Bench, { isNarrow, begin }: Places) {
  /** The plate with all that stands beside it; what stands there; the heading of the part. */
  const workbench = useRef<HTMLDivElement>(null);
  const beside = useRef<HTMLDivElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const lead = useLead();

  const toPlate = () => {
    const top = workbench.current?.getBoundingClientRect().top ?? 0;
    scrollBy({ top, behavior: 'instant' });
  };
  const toHeading = () => {
    if (isNarrow()) toPlate();
    heading.current?.focus({ preventScroll: isNarrow() });
  };
  useEffect(() => {
    /** A part by its name, or the one in which a named input stands. */
    const named = () => {
      const name = location.hash.slice(1);
      return partsOfBench.find((one) => one === name) ?? partOfInput(name);
    };
    const follow = () => {
      const part = named();
      if (!part) return;
      choosePart(bench, part);
      if (location.hash !== `#${part}` && beside.current) leadToInput(beside.current, location.hash.slice(1));
    };
    // Who has begun to type before the page was awake goes on there.
    if (!beside.current?.contains(document.activeElement)) {
      const first = begin();
      if (named()) follow();
      else if (first) choosePart(bench, first);
    }
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  return {
    workbench,
    beside,
    heading,
    /** Takes a part, and leads to its controls. */
    choose: (part: PartOfBench) => {
      if (part === bench.part.peek()) return toHeading();
      lead(() => {
        toHeading();
        return undefined;
      });
      return choosePart(bench, part);
    },
    /** Once it is drawn again, the plate stands at the top of the screen. */
    leadToPlate: () =>
      lead(() => {
        toPlate();
        return undefined;
      }),
  };
}
