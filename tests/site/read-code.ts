/** Reads a QR code that a page draws, as a phone would: as a picture. */
import type { Locator } from '@playwright/test';
import jsQR from 'jsqr';

const side = 400;

/** What the code says. The picture is made on an empty page: the policy of the site's own pages allows none from text. */
export async function readCode(code: Locator): Promise<string | undefined> {
  const drawing = await code.evaluate((svg, size) => {
    const copy = svg.cloneNode(true) as SVGElement;
    copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
    copy.setAttribute('width', String(size));
    copy.setAttribute('height', String(size));
    return copy.outerHTML;
  }, side);
  const blank = await code.page().context().newPage();
  const pixels = await blank.evaluate(
    async ([text, size]) => {
      const picture = new Image();
      picture.src = `data:image/svg+xml,${encodeURIComponent(text)}`;
      await picture.decode();
      const pen = new OffscreenCanvas(size, size).getContext('2d')!;
      pen.drawImage(picture, 0, 0);
      return [...pen.getImageData(0, 0, size, size).data];
    },
    [drawing, side] as const,
  );
  await blank.close();
  return jsQR(Uint8ClampedArray.from(pixels), side, side)?.data;
}
