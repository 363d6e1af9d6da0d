/** The link that opens this box again, as text and as a QR code. The code is made on the device when the sheet is open. */

import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { currentBox, linkToBox } from '../../notebook/current.ts';
import { href } from '../kit/href.ts';
import { QrCode } from '../kit/QrCode.tsx';
import { useCode } from '../kit/use-code.ts';

const tooLong = 'too long';

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
  const made = useCode(link === tooLong ? undefined : link) ?? (link === tooLong ? tooLong : undefined);
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
      <QrCode code={made} label="QR code of the link to this box" />
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
