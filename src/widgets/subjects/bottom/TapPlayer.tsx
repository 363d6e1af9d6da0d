/** Buttons that play the taps of a figure, with words for those who do not hear them. Silent until one is pressed. */
import { useSignal } from '@preact/signals';
import { useEffect, useId, useRef } from 'preact/hooks';
import type { TappedBottom } from '../../../figures/bottom/TapSpectra.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { Playing } from './play-taps.ts';

type Code = typeof import('./play-taps.ts');
const fetchCode = () => import('./play-taps.ts').catch(() => undefined);

const Thick = ({ of }: { of: number }) => <Quantity value={of} kind="length" denominator={16} />;

export function TapPlayer({ bottoms, contact }: { bottoms: readonly TappedBottom[]; contact: number }) {
  const id = useId();
  const volume = useSignal(40);
  const alike = useSignal(false);
  /** Which is heard, or why none is. */
  const heard = useSignal<number | 'missing' | 'silent' | undefined>(undefined);
  const busy = useSignal(false);
  const playing = useRef<Playing>();
  const code = useRef<Code>();
  /** Counts presses: what a later one has overtaken is not played. */
  const pressed = useRef(0);

  const stop = () => {
    pressed.current++;
    playing.current?.stop();
    playing.current = undefined;
    busy.value = false;
  };
  useEffect(() => {
    const leave = () => {
      if (document.hidden) stop();
    };
    document.addEventListener('visibilitychange', leave);
    return () => {
      document.removeEventListener('visibilitychange', leave);
      stop();
    };
  }, []);

  const play = async (order: readonly number[]) => {
    stop();
    const mine = pressed.current;
    code.current ??= await fetchCode();
    if (mine !== pressed.current) return;
    if (!code.current) {
      heard.value = 'missing';
      return;
    }
    playing.current = code.current.playTaps({
      taps: bottoms.map(({ notes }) => notes),
      contact,
      alike: alike.value,
      order,
      volume: volume.value,
      begins: (which) => {
        if (mine === pressed.current) heard.value = which;
      },
      ends: () => {
        if (mine === pressed.current) busy.value = false;
      },
    });
    busy.value = playing.current !== undefined;
    if (!playing.current) heard.value = 'silent';
  };

  return (
    <fieldset class="player">
      <legend>Hear it (no sound until you press)</legend>
      <p class="presses">
        {bottoms.map(({ h }, i) => (
          <button key={h} type="button" class="quiet" onClick={() => play([i])}>
            <span class="heard">tap the bottom of </span>
            <Thick of={h} />
          </button>
        ))}
        <button type="button" class="quiet" onClick={() => play(bottoms.map((_, i) => i))}>
          one after another
        </button>
        <button type="button" class="quiet" aria-disabled={!busy.value} onClick={stop}>
          stop
        </button>
      </p>
      <p class="loudness">
        <label for={`${id}v`}>volume</label>
        <input
          id={`${id}v`}
          type="range"
          min={0}
          max={100}
          step={5}
          value={volume.value}
          aria-valuetext={`${volume.value} percent`}
          onInput={(event) => {
            volume.value = Number(event.currentTarget.value);
            playing.current?.volume(volume.value);
          }}
        />
        <label>
          <input
            type="checkbox"
            checked={alike.value}
            onChange={(event) => {
              alike.value = event.currentTarget.checked;
            }}
          />{' '}
          all equally loud, to compare pitch and ring
        </label>
      </p>
      <p class="caption" role="status">
        <Caption heard={heard.value} bottoms={bottoms} />
      </p>
    </fieldset>
  );
}

function Caption({
  heard,
  bottoms,
}: {
  heard: number | 'missing' | 'silent' | undefined;
  bottoms: readonly TappedBottom[];
}) {
  if (heard === 'missing')
    return (
      <>The sound could not be fetched. Press again when there is a network; the figure says the same.</>
    );
  if (heard === 'silent') return <>This browser plays no sound; the figure says the same.</>;
  const bottom = heard === undefined ? undefined : bottoms[heard];
  if (!bottom) return <>What you hear will be said here in words.</>;
  const [first] = bottom.notes;
  return (
    <>
      <Thick of={bottom.h} />: a tap at <Quantity value={first!.f} kind="number" digits={0} /> Hz that takes{' '}
      <Quantity value={first!.ring} kind="number" digits={2} /> s to fade
      {heard === 0 ? (
        '; the wood moves the fastest of the four.'
      ) : (
        <>
          ; the wood moves <Quantity value={bottom.speed} kind="percent" digits={0} /> as fast as in the
          first.
        </>
      )}
    </>
  );
}
