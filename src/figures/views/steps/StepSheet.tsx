/** The sheet of a step's picture: small, all of one size. */
import type { ComponentChildren } from 'preact';

/** In user units; a label is 15 of them high, so that it is read where the sheet is 180 px wide. */
export const sheet = { width: 240, height: 112, text: 15 } as const;

export const StepSheet = ({ shows, children }: { shows: string; children: ComponentChildren }) => (
  <svg
    class="drawing step-picture"
    viewBox={`0 0 ${sheet.width} ${sheet.height}`}
    style={{ fontSize: `${sheet.text}px` }}
    role="img"
    aria-label={shows}
  >
    {children}
  </svg>
);
