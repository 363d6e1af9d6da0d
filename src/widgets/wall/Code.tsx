/** The figure of the wall for a phone: a code over the whole wall, to be read from the back row. */
import { useEffect, useRef } from 'preact/hooks';
import { encodeLink } from '../../notebook/codec.ts';
import { currentBox } from '../../notebook/current.ts';
import { QrCode } from '../kit/QrCode.tsx';
import { useCode } from '../kit/use-code.ts';
import type { Slide } from './slides.ts';
import { standingOf } from './standing.ts';
import { panel } from './state.ts';

/** Where others find this page; undefined where only this device does: opened from a file, or served for itself. */
function addressOfPage(): string | undefined {
  const site = import.meta.env.SITE as string | undefined;
  if (site) return new URL(location.pathname, site).href;
  const isOwn = location.protocol === 'file:' || /^(localhost|127\.|\[::1\])/.test(location.host);
  return isOwn ? undefined : location.origin + location.pathname;
}

/** The link to a figure with the box, and the sliders of the figure, as they are; a guess is covered there too. */
function linkTo(slide: Slide): string | undefined {
  const page = addressOfPage();
  const box = encodeLink(currentBox.value);
  const standing = slide.isGuess ? [] : standingOf(slide.figure);
  const set = standing.length > 0 ? `&set=${encodeURIComponent(standing.join(','))}` : '';
  return page && `${page}#at=${slide.name}${set}${box ? `&box=${box}` : ''}`;
}

export function CodeOnWall({ slide }: { slide: Slide }) {
  const root = useRef<HTMLDivElement>(null);
  const link = linkTo(slide);
  const code = useCode(link);
  useEffect(() => root.current?.querySelector('button')?.focus(), []);
  return (
    <div
      class="wall-code"
      data-link={link}
      role="dialog"
      aria-label="This figure on a phone"
      aria-modal="true"
      ref={root}
    >
      {code && typeof code === 'object' ? (
        <QrCode code={code} label="QR code of the link to this figure" />
      ) : (
        <p role="status">
          {!link
            ? 'No code: this page is opened from this device alone, at an address that no phone can reach. From the site’s own address there is one.'
            : code === 'too long'
              ? 'No code: this box is too long for one that a phone can read.'
              : code === 'not fetched'
                ? 'No code: the part that makes it could not be fetched. Try again when there is a network.'
                : ''}
        </p>
      )}
      <p>
        {link &&
          (slide.isGuess
            ? 'This figure on your phone, covered: guess yourself. '
            : 'This figure on your phone, as it stands. ')}
        <button
          type="button"
          onClick={() => {
            panel.value = undefined;
          }}
        >
          back
        </button>
      </p>
    </div>
  );
}
