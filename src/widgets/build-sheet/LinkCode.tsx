/** The link that opens this box again, as text and as a QR code. The code is made on the device when the sheet is open. */

import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { currentBox, linkToBox } from '../../notebook/current.ts';
import { href } from '../kit/href.ts';

const tooLong = 'too long';

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

/** The link to the current box; empty until the page is awake, because only then its address is known, and 'too long' where there can be none. */
function useLink(): string {
  const link = useSignal('');
  const box = currentBox.value;
  useEffect(() => {
    link.value = linkToBox(location.origin + href('my-box/')) ?? tooLong;
  }, [box]);
  return link.value;
}

/** Short enough to stand beside the code. */
const isShort = (link: string) => link.length <= 120;

export function LinkCode() {
  const link = useLink();
  const code = useSignal<Code | 'too long' | 'not fetched' | undefined>(undefined);
  useEffect(() => {
    let current = true;
    // The code of the box before must not stand beside the link of this one.
    code.value = link === tooLong ? tooLong : undefined;
    if (link && link !== tooLong)
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
  const made = code.value;
  if (made === undefined) return null;
  if (made === 'not fetched')
    return (
      <p role="status">
        The code could not be made: a part of this page could not be fetched. The link stands in full at the
        end.
      </p>
    );
  if (made === 'too long')
    return (
      <p>
        This box is too long for a code that a phone can read, with all its things and reasons: save it as a
        file too.
      </p>
    );
  return (
    <div class="link-code">
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
      <p>
        Opens this box again, with every input.{' '}
        {isShort(link) ? <LinkItself link={link} /> : 'The link stands in full at the end.'}
      </p>
    </div>
  );
}

const LinkItself = ({ link }: { link: string }) => (
  <a class="link-text" href={link}>
    {link}
  </a>
);

/** The end of the sheet: the link, where it is too long to stand beside its code. */
export function LinkAtEnd() {
  const link = useLink();
  if (!link || link === tooLong || isShort(link)) return null;
  return (
    <section class="at-end">
      <h2>This box again</h2>
      <p>
        <LinkItself link={link} />
      </p>
    </section>
  );
}
