/**
 * The tries of one figure, written down when the hand has been still for a while, and the nudge where two things were
 * changed at once (de Jong and van Joolingen 1998: who changes several at a time learns little from the answer).
 * Nothing is done while a hand moves: only its coming and going is listened to.
 * Over 150 lines: what notes a try and what shows it share one memory of the last.
 */
import { signal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import {
  changedBetween,
  keepTries,
  type LabTry,
  loadTries,
  mostTries,
  nudgeOf,
  type Setting,
} from '../../notebook/learning/lab-tries.ts';
import { useLead } from '../kit/use-lead.ts';
import { type TryLog, tryIn } from './try-in.ts';

/** A setting counts as a try once it has stood as long as it takes to look at what came out, ms. */
const stillFor = 1500;

/** Puts a setting back where it stood, as a hand would: the figure's own controls take it from there. */
function putBack(lab: Element, { name, value }: Setting): void {
  for (const control of lab.querySelectorAll('.control')) {
    if (control.querySelector('label')?.firstChild?.textContent?.trim() !== name) continue;
    const field = control.querySelector<HTMLInputElement | HTMLSelectElement>(
      '[type=text],select,[type=range]',
    );
    if (!field || field.value === value) return;
    field.value = value;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    field.dispatchEvent(new Event('change', { bubbles: true }));
    return;
  }
}

const unitsNow = () => document.documentElement.dataset.units;

/** @param start what stood in the figure before the hand came */
export function logOf(lab: Element, title: string, start: LabTry): TryLog {
  const figure = `${location.pathname} ${title}`;
  const tries = signal(loadTries(figure));
  const nudge = signal('');
  let last = start;
  let units = unitsNow();
  /** Whether a button moved several controls: then nobody has to be told. */
  let byButton = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const keep = (all: readonly LabTry[]) => {
    tries.value = all.slice(-mostTries);
    keepTries(figure, tries.value);
  };
  const note = () => {
    const now = tryIn(lab);
    const changed = changedBetween(last, now);
    const jumped = byButton;
    byButton = false;
    if (changed.length === 0) return;
    nudge.value = jumped ? '' : nudgeOf(changed);
    // What it was before the first change is the try to compare with.
    const before = tries.peek().length === 0 ? [last] : tries.peek();
    last = now;
    keep([...before, { ...now, moved: changed }]);
  };
  const wait = () => {
    clearTimeout(timer);
    timer = setTimeout(note, stillFor);
  };
  const hold = () => {
    clearTimeout(timer);
    if (units === unitsNow()) return;
    // The same settings in other units are no try.
    units = unitsNow();
    last = tryIn(lab);
  };
  for (const comes of ['pointerdown', 'keydown']) lab.addEventListener(comes, hold, true);
  for (const goes of ['pointerup', 'pointercancel', 'keyup', 'change']) lab.addEventListener(goes, wait);
  // On the way down: a button of the list is gone from the page once it has done its work.
  const press = ({ target }: Event) => {
    const button = (target as Element).closest('button');
    if (button && !button.closest('.stepper, .lab-tries')) byButton = true;
    wait();
  };
  lab.addEventListener('click', press, true);
  // The hand may have come and gone before this was fetched.
  wait();

  const bringBack = (wanted: LabTry) => {
    for (const setting of wanted.set) putBack(lab, setting);
    last = wanted;
    nudge.value = '';
  };

  const List = () => {
    const head = useRef<HTMLParagraphElement>(null);
    const leadTo = useLead();
    const all = tries.value;
    const everMoved = new Set(all.flatMap(({ moved = [] }) => moved));
    return (
      <>
        <p class="help" tabIndex={-1} ref={head}>
          {all.length === 0
            ? 'None yet. What you set here is noted once it has stood for a moment.'
            : 'What you set, and what you got, the last one below. Kept for this visit.'}
        </p>
        <ol>
          {all.map((one, at) => (
            <li key={at}>
              <span class="set">
                {one.set
                  .filter(({ name, main }) => main || everMoved.has(name))
                  .map(({ name, shown }, place) => {
                    const Mark = one.moved?.includes(name) ? 'b' : 'span';
                    return (
                      <Mark key={name}>
                        {place > 0 && ', '}
                        {name} {shown}
                      </Mark>
                    );
                  })}
              </span>
              {one.got.map((line) => (
                <span class="got" key={line}>
                  {line}
                </span>
              ))}
              <button
                type="button"
                class="quiet"
                aria-label={`bring back try ${at + 1}`}
                onClick={() => bringBack(one)}
              >
                bring back
              </button>
            </li>
          ))}
        </ol>
        {all.length > 0 && (
          <button
            type="button"
            class="quiet"
            onClick={() => {
              last = tryIn(lab);
              nudge.value = '';
              leadTo(() => head.current);
              keep([]);
            }}
          >
            clear my tries
          </button>
        )}
      </>
    );
  };
  const Nudge = () => (
    <p role="status" class="nudge">
      {nudge.value}
    </p>
  );
  return { List, Nudge };
}
