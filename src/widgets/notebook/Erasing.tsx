/** Before everything is erased: what goes, and the question whether it shall. */
import { type Notebook, planOf } from '../../notebook/everything/everything.ts';

interface Props {
  now: Notebook;
  onErase: () => void;
  onLeave: () => void;
}

export function Erasing({ now, onErase, onLeave }: Props) {
  const going = planOf(now, {}, {});
  return (
    <div class="erasing">
      <h3 tabIndex={-1}>
        {going.length > 0 ? 'This goes from this device' : 'Nothing is kept on this device'}
      </h3>
      <ul>
        {going.map((line) => (
          <li key={line.key}>{line.single ? line.name : `${line.name}: ${line.now}`}</li>
        ))}
      </ul>
      <p>
        {going.length > 0 && (
          <>
            <button type="button" onClick={onErase}>
              erase it
            </button>{' '}
          </>
        )}
        <button type="button" class="quiet" onClick={onLeave}>
          {going.length > 0 ? 'keep it' : 'close'}
        </button>
      </p>
    </div>
  );
}
