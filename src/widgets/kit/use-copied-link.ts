/** A link that is put where the reader can paste it; where the browser does not let the page, it is shown. */
import { useSignal } from '@preact/signals';

interface Words {
  /** What it holds, once it is copied. */
  copied: string;
  /** There is no link that short. */
  tooLong: string;
}

/** @param link undefined where it would be too long */
export function useCopiedLink(link: () => string | undefined, { copied, tooLong }: Words) {
  const said = useSignal('');
  /** The link, where it could not be copied. */
  const shown = useSignal('');
  const copy = async () => {
    const made = link();
    if (!made) {
      said.value = tooLong;
      return;
    }
    try {
      await navigator.clipboard.writeText(made);
      shown.value = '';
      said.value = copied;
    } catch {
      shown.value = made;
      said.value = 'This browser does not let the page copy. The link stands below, for you to copy.';
    }
  };
  return { said, shown, copy };
}
