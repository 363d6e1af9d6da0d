/** A link as a QR code, made on this device when it is asked for. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

export interface Code {
  readonly size: number;
  readonly path: string;
}
/** A code; or why there is none: too much to say in one that a phone can read, or the part that makes it is not here. */
export type Made = Code | 'too long' | 'not fetched';

/** Dark squares as one path; neighbors of a row as one stretch. */
function pathOf(rows: readonly (readonly boolean[])[]): string {
  return rows
    .flatMap((row, y) =>
      row.map((dark, x) => {
        if (!dark || row[x - 1]) return '';
        const end = row.indexOf(false, x);
        return `M${x} ${y}h${(end < 0 ? row.length : end) - x}v1H${x}z`;
      }),
    )
    .join('');
}

/** The code of a link; undefined while there is no link, or until it is made. */
export function useCode(link: string | undefined): Made | undefined {
  const code = useSignal<Made | undefined>(undefined);
  useEffect(() => {
    let current = true;
    // The code of the link before must not stand beside this one.
    code.value = undefined;
    if (link)
      import('uqr').then(
        ({ encode }) => {
          if (!current) return;
          try {
            const { data, size } = encode(link, { ecc: 'M', border: 4 });
            code.value = { size, path: pathOf(data) };
          } catch {
            code.value = 'too long';
          }
        },
        () => {
          if (current) code.value = 'not fetched';
        },
      );
    return () => {
      current = false;
    };
  }, [link]);
  return code.value;
}

/** The drawing of a code. */
export const DrawnCode = ({ code, label }: { code: Code; label: string }) => (
  <svg
    class="qr"
    role="img"
    aria-label={label}
    viewBox={`0 0 ${code.size} ${code.size}`}
    shape-rendering="crispEdges"
  >
    <rect class="qr-paper" width={code.size} height={code.size} />
    <path class="qr-ink" d={code.path} />
  </svg>
);
