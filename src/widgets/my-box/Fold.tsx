/** Something behind a fold: drawn while it is open, and no sooner. */
import type { ComponentChildren } from 'preact';
import { useOpen } from '../kit/use-open.ts';

interface Props {
  summary: ComponentChildren;
  class?: string;
  /** For links that lead to it. */
  id?: string;
  children: () => ComponentChildren;
}

export function Fold({ summary, children, ...rest }: Props) {
  const { open, fold } = useOpen();
  return (
    <details {...rest} class={`fold ${rest.class ?? ''}`} {...fold}>
      <summary>
        <span>{summary}</span>
      </summary>
      {open.value && children()}
    </details>
  );
}
