/** Says when a box in a link or on the device could not be read; nothing is lost: the text can be copied. */
import { damaged } from '../notebook/current.ts';

export default function Damaged() {
  const found = damaged.value;
  if (!found) return null;
  return (
    <div class="notice" role="alert">
      <p>
        {found.message} The example is shown instead. What was found is kept here; copy it if you want to keep
        it.
      </p>
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
          }}
        >
          close
        </button>
      </p>
    </div>
  );
}
