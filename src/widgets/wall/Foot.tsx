/** Below every figure on the wall: the hands of the class, and the keys as buttons. */
import { units } from '../../notebook/units.ts';
import { CodeOnWall } from './Code.tsx';
import { Hands } from './Hands.tsx';
import type { Acts } from './keys.ts';
import { isOpen, note, panel, place, slide, specOf, truthOf } from './state.ts';

export const Question = () => <h1 class="wall-ask">{slide.value?.ask}</h1>;

export function Foot({ acts }: { acts: Acts }) {
  const now = slide.value;
  if (!now) return null;
  const spec = specOf(now);
  const covered = now.isGuess && !isOpen.value;
  const { at, of } = place.value;
  return (
    <>
      {spec && <Hands slide={now} spec={spec} truth={truthOf(now, units.value)} />}
      <nav class="wall-foot" aria-label="Wall" tabIndex={-1}>
        <p role="status">{note.value}</p>
        <button
          type="button"
          class="turn"
          onClick={acts.back}
          aria-label={isOpen.value ? 'cover it again, Page Up' : 'figure before, Page Up'}
        >
          ‹ PgUp
        </button>
        <button
          type="button"
          class="turn"
          onClick={acts.on}
          aria-label={covered ? 'open it, Page Down' : 'next figure, Page Down'}
        >
          PgDn ›
        </button>
        {now.isGuess && (
          <button type="button" class="quiet" onClick={acts.hands}>
            hands
          </button>
        )}
        <button type="button" class="quiet" onClick={acts.reset}>
          reset
        </button>
        <button type="button" class="quiet" onClick={acts.code}>
          code
        </button>
        <button type="button" class="quiet" onClick={acts.leave} aria-label="leave the wall, Escape">
          Esc
        </button>
        <span>
          {at + 1}/{of}
        </span>
      </nav>
      {panel.value === 'code' && <CodeOnWall slide={now} />}
    </>
  );
}
