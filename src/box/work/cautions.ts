/**
 * What can hurt, and the usual safeguard. Every caution comes second to the machine's manual, local rules and a
 * qualified instructor, which the sheet says once for all of them.
 */
export interface Caution {
  readonly says: string;
  /** Ids in `content/sources`; empty where it is common practice without a source. */
  readonly sources: readonly string[];
}

const all = {
  machines: {
    says: 'Guards on, riving knife or spreader in place, push stick for the last 300 mm (12 in), eyes and ears protected, the dust extracted. No piece under 305 mm (12 in) over a jointer (surface planer), through a planer (thicknesser) or ripped freehand; nothing thinner than the planer’s manual allows.',
    sources: ['hse-wis16', 'hse-wis17', 'osha-1910-213'],
  },
  crosscut: {
    says: 'A stop must never trap the piece between fence and blade: end it short of the blade. Clamp short pieces to the sled; hands at least 75 mm (3 in) from the blade. Let the blade stop before you take the piece away.',
    sources: ['osha-1910-213'],
  },
  upright: {
    says: 'A wall standing on its end needs a tall carriage, a clamp and a backing block. Hands at least 75 mm (3 in) from the cutter, also behind the carriage where it comes out.',
    sources: ['hse-wis16'],
  },
  groove: {
    says: 'Groove on a table saw (circular saw) only with the blade effectively guarded. On a router table feed against the rotation, in passes of at most 3 mm (1/8 in); unplug to change the bit.',
    sources: ['hse-wis16'],
  },
  stopped: {
    says: 'No stopped grooves on a table saw (circular saw bench): work let down onto a turning blade can be thrown. A router table is the same hazard where work is lowered onto the bit: only with end stops that hold the part at both ends, and after instruction; otherwise with chisel and gauge, or a hand-held router on a clamped part.',
    sources: ['hse-wis16'],
  },
  resaw: {
    says: 'Resawing is a deep cut that pinches and binds: a band saw with a sharp wide blade, the guide just above the wood, a tall fence and push blocks, fingers never in line with the blade, the dust extracted. Not on a table saw without training for it; a frame saw does it by hand.',
    sources: [],
  },
  shortPanel: {
    says: 'This panel is shorter than 305 mm (12 in) or thin: plane it by hand, or on a longer carrier board, or while it is joined to another part; saw and rabbet it on a sled that holds it, or by hand. It does not go through a machine on its own; no machine takes stock thinner than its manual allows.',
    sources: ['hse-wis16', 'hse-wis17'],
  },
  plywood: {
    says: 'Plywood with a knife: several light passes along a clamped straightedge, fingers off its edge. At a saw thin panels flutter and climb: hold them down on a backing sheet or a sled. Their dust harms like that of any wood.',
    sources: ['hse-wood-dust'],
  },
  smallStock: {
    says: 'Small strips split, lift and are thrown: saw them off a longer piece by hand or on a sled that holds them, and never with fingers beside the blade.',
    sources: [],
  },
  shortRip: {
    says: 'This piece is short and thin: rip it by hand and plane it, or hold it in a carrier. Never freehand at a machine.',
    sources: ['hse-wis16'],
  },
  boring: {
    says: 'Clamp the lid on a backing board: a loose panel catches on the bit and spins. Hair, sleeves and gloves away from the bit; the drill’s manual gives its speed.',
    sources: [],
  },
  chisel: { says: 'Clamp the work. Both hands stay behind the cutting edge.', sources: [] },
  keys: {
    says: 'Hold the box in a cradle that covers the blade where it comes out, both hands behind it. A hand saw does it well.',
    sources: [],
  },
  sawnLid: {
    says: 'The guard is usually off for this cut, the box is short and the last cut can grab. At a machine only with an instructor beside you; a hand saw along a line, or a band saw with a fence, is the safer way.',
    sources: ['osha-1910-213'],
  },
  dust: {
    says: 'All wood dust harms, of softwood and boards too; that of hardwoods can cause cancer of the nose. Extract where it is made, wear a fitted mask, do not sweep it dry.',
    sources: ['hse-wood-dust', 'osha-wood-dust', 'iarc-100c'],
  },
  panelFinish: {
    says: 'Sanding dust of any wood harms: extract it and wear a fitted mask. Air the room while a finish dries, keep flames away, follow its label; rags with a drying oil are spread flat outdoors in one layer or put in water in a lidded metal can, since they can take fire by themselves.',
    sources: ['hse-wood-dust', 'nfpa-oily-rags', 'osha-1910-106'],
  },
  rags: {
    says: 'Rags with a drying oil heat up and can take fire by themselves within hours. Spread them flat outdoors in one layer, or put them in water in a lidded metal can. Air the room; no flames.',
    sources: ['nfpa-oily-rags', 'osha-1910-106'],
  },
} as const satisfies Record<string, Caution>;

export type CautionName = keyof typeof all;
export const cautions: Readonly<Record<CautionName, Caution>> = all;

/** The rider to every caution. */
export const rider =
  'Your machine’s and product’s manual, your local rules and a qualified instructor come before this sheet.';
