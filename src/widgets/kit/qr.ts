/** QR codes as paths for a drawing, made on the device. What makes them is fetched with the first. */

/** A code, one unit a module, with its quiet edge. */
export interface Qr {
  readonly size: number;
  readonly path: string;
}

/** Dark squares as one path; neighbors of a row as one stretch. */
const pathOf = (rows: readonly (readonly boolean[])[]): string =>
  rows
    .flatMap((row, y) =>
      row.map((dark, x) => {
        if (!dark || row[x - 1]) return '';
        const end = row.indexOf(false, x);
        return `M${x} ${y}h${(end < 0 ? row.length : end) - x}v1H${x}z`;
      }),
    )
    .join('');

/** Which of the eight masks of the standard lies over a code: the best for this text, or for many codes always the first. */
const masks = { one: -1, many: 0 } as const;

/**
 * What makes the code of a text, or undefined where it is too long for one. Rejects where it cannot be fetched.
 * @param how many codes are made. To try all masks takes nearly all of the time, and a reader takes off any.
 */
export async function qrMaker(how: keyof typeof masks): Promise<(text: string) => Qr | undefined> {
  const { encode } = await import('uqr');
  return (text) => {
    try {
      const { data, size } = encode(text, { ecc: 'M', border: 4, maskPattern: masks[how] });
      return { size, path: pathOf(data) };
    } catch {
      return undefined;
    }
  };
}
