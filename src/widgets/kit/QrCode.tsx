/** A QR code, drawn: black on white in the dark too, since not every phone reads it the other way round. */
import type { Qr } from './qr.ts';

export const QrCode = ({ code: { size, path }, label }: { code: Qr; label: string }) => (
  <svg class="qr" role="img" aria-label={label} viewBox={`0 0 ${size} ${size}`} shape-rendering="crispEdges">
    <rect width={size} height={size} fill="#fff" />
    <path d={path} fill="#000" />
  </svg>
);
