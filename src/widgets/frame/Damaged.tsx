/** What the reader must know about keeping: a box that could not be read, a change that could not be made, a device that keeps nothing. */

import { useEffect, useRef } from 'preact/hooks';
import { damaged } from '../../notebook/aside.ts';
import { refused } from '../../notebook/current.ts';
import { isSaving } from '../../notebook/storage.ts';
import { href } from '../kit/href.ts';
import { openWall } from '../wall/door.ts';

export default function Damaged() {
  useEffect(openWall, []);
  const found = damaged.value;
  /** Where the reader came from to a notice: closing it leads back there, or to the page. */
  const from = useRef<EventTarget | null>(null);
  const leave = () => {
    const back = from.current;
    (back instanceof HTMLElement && back.isConnected ? back : document.getElementById('main'))?.focus();
  };
  return (
    <div
      onFocusIn={({ currentTarget, relatedTarget }) => {
        if (!(relatedTarget instanceof Node && currentTarget.contains(relatedTarget)))
          from.current = relatedTarget;
      }}
    >
      {found && (
        <div class="notice" role="alert">
          <p>{found.message} What was found stands here; copy it if you want to keep it.</p>
          <textarea readOnly rows={2} aria-label="What was found" value={found.text} />
          <p>
            <button type="button" onClick={() => navigator.clipboard?.writeText(found.text)}>
              copy
            </button>{' '}
            <button
              type="button"
              class="quiet"
              onClick={() => {
                damaged.value = undefined;
                leave();
              }}
            >
              close
            </button>
          </p>
        </div>
      )}
      {!isSaving.value && (
        <p class="notice" role="alert">
          This device does not let the page keep your box: its store is blocked or full. The links of this
          site take the box along; to have it tomorrow, save it as a file or copy a link, in{' '}
          <a href={href('my-box/')}>my box</a>.
        </p>
      )}
      {refused.value && (
        <p class="notice at-hand" role="alert">
          {refused.value}{' '}
          <button
            type="button"
            class="quiet"
            onClick={() => {
              refused.value = undefined;
              leave();
            }}
          >
            close
          </button>
        </p>
      )}
    </div>
  );
}
