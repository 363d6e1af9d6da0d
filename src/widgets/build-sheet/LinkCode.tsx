/** The link that opens this box again, as text and as a QR code. The code is made on the device when the sheet is open. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { currentBox, linkToBox } from '../../notebook/current.ts';

const root = import.meta.env.BASE_URL.replace(/\/?$/, '/');

interface Code {
  readonly size: number;
  readonly path: string;
}

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

export function LinkCode() {
  const link = useSignal('');
  const code = useSignal<Code | 'too long' | undefined>(undefined);
  const box = currentBox.value;
  useEffect(() => {
    let current = true;
    link.value = linkToBox(`${location.origin}${root}my-box/`);
    void import('uqr').then(({ encode }) => {
      if (!current) return;
      try {
        const { data, size } = encode(link.value, { ecc: 'M', border: 4 });
        code.value = { size, path: pathOf(data) };
      } catch {
        code.value = 'too long';
      }
    });
    return () => {
      current = false;
    };
  }, [box]);
  if (!link.value) return <p>The link appears when this page is awake.</p>;
  const made = code.value;
  return (
    <div class="link-code">
      {typeof made === 'object' && (
        <svg
          class="qr"
          role="img"
          aria-label="QR code of the link to this box"
          viewBox={`0 0 ${made.size} ${made.size}`}
          shape-rendering="crispEdges"
        >
          <rect class="qr-paper" width={made.size} height={made.size} />
          <path class="qr-ink" d={made.path} />
        </svg>
      )}
      <p>
        This link opens the box again; it holds every input.
        {made === 'too long' && ' It is too long for a code: keep the design as a file too.'}
        <br />
        <a class="link-text" href={link.value}>
          {link.value}
        </a>
      </p>
    </div>
  );
}
