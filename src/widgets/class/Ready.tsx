/** One line that says whether everything is on this device, and a button that fetches the rest. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { href } from '../kit/href.ts';
import { canKeep, fetchRest, type Kept, keptHere } from './kept-here.ts';

type State =
  | { readonly is: 'asked' | 'folder' | 'cannot' | 'no list' }
  | { readonly is: 'known'; readonly kept: Kept }
  | { readonly is: 'fetching'; readonly left: number; readonly all: number }
  | { readonly is: 'stopped'; readonly kept: Kept };

const isWhole = ({ missing, worker }: Kept) => missing.length === 0 && worker;

function words(state: State): string {
  switch (state.is) {
    case 'asked':
      return 'Looking what is on this device …';
    case 'folder':
      return 'Ready for no network: these pages come from a folder that has all of them.';
    case 'cannot':
      return 'This browser keeps nothing from this address. Use the stick.';
    case 'no list':
      return 'There is no network, and the list of files is not on this device.';
    case 'fetching':
      return `Fetching: ${state.all - state.left} of ${state.all} files are on this device.`;
    case 'stopped':
      return `The network stopped. ${state.kept.all - state.kept.missing.length} of ${state.kept.all} files are on this device.`;
    case 'known':
      return isWhole(state.kept)
        ? `Ready for no network: all ${state.kept.all} files are on this device.`
        : `Not ready: ${state.kept.all - state.kept.missing.length} of ${state.kept.all} files are on this device.`;
  }
}

export default function Ready() {
  const state = useSignal<State>({ is: 'asked' });
  const root = () => new URL(href(), location.href).href;
  const look = async () => {
    try {
      state.value = { is: 'known', kept: await keptHere(root()) };
    } catch {
      state.value = { is: 'no list' };
    }
  };
  useEffect(() => {
    if (!canKeep()) {
      state.value = { is: location.protocol === 'file:' ? 'folder' : 'cannot' };
      return undefined;
    }
    void look();
    // The worker fetches by itself, in the background.
    const again = setInterval(() => {
      const now = state.value;
      if (now.is === 'known' && isWhole(now.kept)) clearInterval(again);
      else if (now.is !== 'fetching') void look();
    }, 3000);
    return () => clearInterval(again);
  }, []);
  const get = async ({ missing, all }: Kept) => {
    let left = missing.length;
    state.value = { is: 'fetching', left, all };
    try {
      await fetchRest(missing, root(), () => {
        left -= 1;
        state.value = { is: 'fetching', left, all };
      });
      await look();
    } catch {
      const kept = await keptHere(root()).catch(() => undefined);
      state.value = kept ? { is: 'stopped', kept } : { is: 'no list' };
    }
  };
  const now = state.value;
  const rest = (now.is === 'known' && !isWhole(now.kept)) || now.is === 'stopped' ? now.kept : undefined;
  return (
    <div class="ready screen-only">
      <p role="status">{words(now)}</p>
      {(rest || now.is === 'no list') && (
        <p>
          <button type="button" onClick={() => (rest ? get(rest) : look())}>
            {rest ? 'fetch the rest' : 'look again'}
          </button>
        </p>
      )}
      <noscript>
        <p>Without JavaScript this page cannot say what is on the device.</p>
      </noscript>
    </div>
  );
}
