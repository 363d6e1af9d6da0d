/** Which layouts of a guess are drawn: both in the page as it was built, where the style sheet shows one; then that one. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { NumberGuess } from './guess-spec.ts';

type Layout = Pick<NumberGuess, 'figure' | 'frame'>;

/** From where on there is room for the wide layout; `guess.css` says the same. */
const roomy = '(min-width: 52rem)';

export function useSheets(spec: NumberGuess, awake: boolean): readonly (Layout & { className: string })[] {
  const isWide = useSignal(false);
  useEffect(() => {
    if (!spec.wide) return undefined;
    const query = matchMedia(roomy);
    const follow = () => {
      isWide.value = query.matches;
    };
    follow();
    query.addEventListener('change', follow);
    return () => query.removeEventListener('change', follow);
  }, [spec]);
  const narrow = { ...spec, className: spec.wide ? 'sheet-narrow' : '' };
  if (!spec.wide) return [narrow];
  const wide = { ...spec.wide, className: 'sheet-wide' };
  return awake ? [isWide.value ? wide : narrow] : [narrow, wide];
}
