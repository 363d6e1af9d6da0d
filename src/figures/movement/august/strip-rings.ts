/** Growth rings in the end of a strip, as they are drawn at any angle to its face. */

/** Pixels between rings. */
const spacing = 6;

/**
 * Rings across a strip at `angle` degrees to its face, as one path, cut off at its ends. The strip is `high` user units
 * thick and `length` long, its left upper corner at (`left`, `y`).
 */
export function stripRings(angle: number, y: number, high: number, left: number, length: number): string {
  if (angle < 3)
    return Array.from({ length: Math.floor(high / spacing) }, (_, i) => {
      const at = y + (i + 0.75) * spacing;
      return `M${left} ${at}q${length / 2} -4 ${length} 0`;
    }).join('');
  const lean = high / Math.tan((angle * Math.PI) / 180);
  const step = spacing / Math.sin((angle * Math.PI) / 180);
  const lines: string[] = [];
  for (let start = step / 2 - lean; start < length; start += step) {
    const [from, to] = [Math.max(0, start), Math.min(length, start + lean)];
    const at = (x: number) => (y + high - (lean ? ((x - start) / lean) * high : 0)).toFixed(1);
    if (lean < 1e-6) lines.push(`M${left + start} ${y}v${high}`);
    else if (to > from)
      lines.push(`M${(left + from).toFixed(1)} ${at(from)}L${(left + to).toFixed(1)} ${at(to)}`);
  }
  return lines.join('');
}
