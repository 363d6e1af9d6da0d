/** The QR code of a link, made on this device when there is a link. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { type Qr, qrMaker } from './qr.ts';

/** A code; or why there is none: too much to say in one that a phone can read, or the part that makes it is not here. */
export type Made = Qr | 'too long' | 'not fetched';

/** The code of a link; undefined while there is no link, or until it is made. */
export function useCode(link: string | undefined): Made | undefined {
  const code = useSignal<Made | undefined>(undefined);
  useEffect(() => {
    let current = true;
    // The code of the link before must not stand beside this one.
    code.value = undefined;
    if (link)
      qrMaker('one').then(
        (make) => {
          if (current) code.value = make(link) ?? 'too long';
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
