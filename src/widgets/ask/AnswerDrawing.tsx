/** The box with what is meant marked on it. */
import { useMemo } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import { type Marked, MarkedBox } from '../../figures/box/MarkedBox.tsx';

export function AnswerDrawing({ design, part }: { design: Design; part: Marked }) {
  return useMemo(
    () => (
      <div class="answer-drawing">
        <MarkedBox design={design} marked={part} />
      </div>
    ),
    [design, part],
  );
}
