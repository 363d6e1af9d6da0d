/**
 * "my ruler 1/32 in": which rule sizes are written on, in the whole notebook, and with it inches or millimeters. Below it
 * stands how far apart the text is set, since that too is how this reader reads.
 */
import { useComputed, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { shownRulers } from '../../figures/parts/my-ruler.ts';
import { followSpacing, isWide, spaceText } from '../../notebook/text-spacing.ts';
import { chooseRuler, ruler } from '../../notebook/units.ts';
import { pairOf, type Ruler, rulers, usualRuler } from '../../units/index.ts';
import { RulerPiece } from './RulerPiece.tsx';

export default function RulerChoice() {
  /** A page is built before anybody has chosen: then both readers' usual ruler stands here, and the style sheet shows one. */
  const live = useSignal(false);
  const chosen = useComputed(() => (live.value ? ruler.value : undefined));
  const fold = useRef<HTMLDetailsElement>(null);
  const close = () => {
    if (fold.current) fold.current.open = false;
  };
  useEffect(() => {
    live.value = true;
    followSpacing();
    const stop = ruler.subscribe((now) => {
      shownRulers.value = pairOf(now);
    });
    const leave = ({ target }: Event) => {
      if (target instanceof Node && !fold.current?.contains(target)) close();
    };
    addEventListener('pointerdown', leave);
    addEventListener('focusin', leave);
    return () => {
      stop();
      removeEventListener('pointerdown', leave);
      removeEventListener('focusin', leave);
    };
  }, []);
  return (
    <details
      class="my-ruler"
      id="how-i-read"
      ref={fold}
      onKeyDown={({ key }) => {
        if (key !== 'Escape') return;
        close();
        fold.current?.querySelector('summary')?.focus();
      }}
    >
      <summary>
        <span class="of">my ruler </span>
        <b>
          {chosen.value ? (
            chosen.value.name.replace(' ', '\u00a0')
          ) : (
            <>
              <span class="mm">{usualRuler.mm.name.replace(' ', '\u00a0')}</span>
              <span class="inch">{usualRuler.inch.name.replace(' ', '\u00a0')}</span>
            </>
          )}
        </b>
      </summary>
      {chosen.value && (
        <div class="choices">
          <fieldset>
            <legend>Sizes are written on this rule, each drawn twice as large</legend>
            {Object.values(rulers).map((one: Ruler) => (
              <label key={one.name}>
                <input
                  type="radio"
                  name="my-ruler"
                  checked={chosen.value === one}
                  onChange={() => chooseRuler(one)}
                  // A press with a finger or the mouse has decided; arrow keys go on choosing.
                  onClick={({ detail }) => detail > 0 && close()}
                />
                <span>{one.name.replace(' ', '\u00a0')}</span>
                <RulerPiece ruler={one} />
              </label>
            ))}
          </fieldset>
          <label class="more-space">
            <input
              type="checkbox"
              checked={isWide.value}
              onChange={({ currentTarget }) => spaceText(currentTarget.checked)}
            />
            More space between letters, words and lines
          </label>
        </div>
      )}
    </details>
  );
}
