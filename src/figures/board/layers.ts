/** The thickness of a board as it is used up: walls, what is planed off them, saw cuts, and what is left. */

export type LayerKind = 'wall' | 'planed' | 'cut' | 'left';
export interface Layer {
  readonly kind: LayerKind;
  /** mm from the lower face. */
  readonly from: number;
  readonly to: number;
}

/**
 * Layers from the lower face up, mm.
 * @param count whole walls, both faces of each planed; what the board has beyond them is left, after one more cut if there is room for it
 */
export function layersOf(
  count: number,
  { wall, planing, kerf, thickness }: { wall: number; planing: number; kerf: number; thickness: number },
): Layer[] {
  const layers: Layer[] = [];
  let at = 0;
  const add = (kind: LayerKind, size: number) => {
    if (size <= 1e-6) return;
    layers.push({ kind, from: at, to: at + size });
    at += size;
  };
  for (let i = 0; i < count; i++) {
    if (i > 0) add('cut', kerf);
    add('planed', planing);
    add('wall', wall);
    add('planed', planing);
  }
  const rest = thickness - at;
  // Less than a saw cut is not sawn off.
  if (rest > kerf + 1e-6 && count > 0) add('cut', kerf);
  add('left', thickness - at);
  return layers;
}

/** How each is drawn; what becomes shavings and dust is hatched. */
export const layerClass: Readonly<Record<LayerKind, { class: string; fill?: string }>> = {
  wall: { class: 'wood' },
  planed: { class: 'part-finger', fill: 'url(#pencil)' },
  cut: { class: 'hole' },
  left: { class: 'wood-end' },
};
