/**
 * What can hurt, and the usual safeguard: the one table for the order of work, the rules and the lessons. Every caution
 * comes second to the machine's manual, local rules and a qualified instructor, which every place that shows one says.
 * Over 150 lines: it is one table.
 */
export interface Caution {
  /** What it is about, in a word or two, for lists. */
  readonly about: string;
  /** What can happen. */
  readonly hazard: string;
  /** What is usually done about it. */
  readonly safeguard: string;
  /** Ids in `content/sources`; empty where it is common practice without a source. */
  readonly sources: readonly string[];
}

const all = {
  machines: {
    about: 'saws, jointers and planers',
    hazard:
      'Blades and cutters take fingers, throw wood back and make noise and dust. Between the rollers of a planer (thicknesser) nothing holds a short piece, over a jointer (surface planer) it brings your fingers to the cutter, and thin stock lifts and shatters.',
    safeguard:
      'Guards on, riving knife or spreader in place, push stick for the last 300 mm (12 in), eyes and ears protected, the dust extracted. No piece under 305 mm (12 in) over a jointer, through a planer or ripped freehand, so keep parts joined in one long piece; nothing thinner than the planer’s manual allows, else a carrier board or a hand plane.',
    sources: ['hse-wis16', 'hse-wis17', 'osha-1910-213', 'hse-wis13', 'osha-1910-95'],
  },
  crosscut: {
    about: 'cutting to length',
    hazard:
      'A piece that is caught between a stop and the blade is thrown. A bevel cut on a short part can bind and be thrown as well.',
    safeguard:
      'End the stop short of the blade. Clamp short pieces to the sled; hands at least 75 mm (3 in) from the blade. Let the blade stop before you take the piece away.',
    sources: ['hse-wis16', 'osha-1910-213'],
  },
  upright: {
    about: 'walls that stand on end',
    hazard:
      'A wall standing on its end can tip into the cutter or be thrown, and turning it brings hands near.',
    safeguard:
      'A tall carriage, a clamp for each cut and a backing block. Hands at least 75 mm (3 in) from the cutter, also behind the carriage where it comes out, which is common practice. Let the cutter stop before you unclamp or turn the part.',
    sources: ['hse-wis16'],
  },
  groove: {
    about: 'grooves and rabbets (rebates)',
    hazard:
      'The blade of a saw or the bit of a router works where you cannot see it, and a deep cut grabs the part or throws it.',
    safeguard:
      'Groove on a table saw (circular saw) only with the blade effectively guarded. On a router table feed against the rotation, in passes of at most 3 mm (1/8 in), hands at least 75 mm (3 in) away; unplug to change the bit. Groove long strips and cut them up afterward where the joint allows.',
    sources: ['hse-wis16'],
  },
  stopped: {
    about: 'stopped grooves',
    hazard:
      'Work let down onto a turning blade can be thrown. A router table is the same hazard where work is lowered onto the bit.',
    safeguard:
      'No stopped grooves on a table saw (circular saw bench). On a router table only with end stops that hold the part at both ends, and after instruction; otherwise with chisel and gauge, or a hand-held router on a clamped part.',
    sources: ['hse-wis16'],
  },
  resaw: {
    about: 'resawing',
    hazard: 'Resawing is a deep cut that pinches and binds; a circular saw then throws the board.',
    safeguard:
      'A band saw with a sharp wide blade, the guide just above the wood, a tall fence and push blocks, fingers never in line with the blade, the dust extracted. One long piece, never a single short wall. Not on a table saw without training for it; a frame saw does it by hand.',
    sources: [],
  },
  stressed: {
    about: 'ripping wood from beside the pith',
    hazard:
      'Wood beside the pith often holds stress. As it is ripped it can close on the blade or spring from the fence, and the saw throws it back at you.',
    safeguard:
      'Use a riving knife or splitter and stay out of the line of the blade. Stop feeding a piece that pinches, and do not feed a short, bent or split piece at all.',
    sources: [],
  },
  shortPanel: {
    about: 'short or thin panels',
    hazard:
      'A panel that is shorter than 305 mm (12 in) or thin is not held by a machine, and can be thrown.',
    safeguard:
      'Plane it by hand, or on a longer carrier board, or while it is joined to another part; saw and rabbet it on a sled that holds it, or by hand. It does not go through a machine on its own; no machine takes stock thinner than its manual allows.',
    sources: ['hse-wis16', 'hse-wis17'],
  },
  trim: {
    about: 'trimming a lid or a panel',
    hazard:
      'A short, thin or cupped panel can break up or be thrown back by a jointer (surface planer) or planer (thicknesser). A tool that pries at a stuck lid slips into the hand.',
    safeguard:
      'Do not force it: let the box dry for a week or two first. Then clamp the panel and use a hand plane, both hands behind the edge.',
    sources: ['hse-wis17'],
  },
  plywood: {
    about: 'cutting plywood',
    hazard:
      'A knife slips off an edge, and at a saw thin panels flutter and climb. Their dust harms like that of any wood.',
    safeguard:
      'With a knife several light passes along a clamped straightedge, never one hard one, fingers off its edge. At a saw hold the panel down on a backing sheet or a sled.',
    sources: ['hse-wood-dust'],
  },
  smallStock: {
    about: 'small strips and parts',
    hazard: 'Small strips split, lift and are thrown.',
    safeguard:
      'Shape and notch them while they are one long piece, and saw them off last, by hand or on a sled that holds them, never with fingers beside the blade.',
    sources: [],
  },
  shortRip: {
    about: 'ripping short pieces',
    hazard: 'A piece that is short and thin twists into the blade and is thrown.',
    safeguard: 'Rip it by hand and plane it, or hold it in a carrier. Never freehand at a machine.',
    sources: ['hse-wis16'],
  },
  boring: {
    about: 'boring',
    hazard: 'A loose panel catches on the bit and spins.',
    safeguard:
      'Clamp the part, a lid on a backing board, and mark the depth on the bit. Hair, sleeves and gloves away from the bit; the drill’s manual gives its speed.',
    sources: [],
  },
  chisel: {
    about: 'chisels and planes',
    hazard: 'An edge that slips goes as far as you push.',
    safeguard: 'Clamp the work. Both hands stay behind the cutting edge.',
    sources: [],
  },
  gouge: {
    about: 'thumb notches',
    hazard: 'A gouge slips when the wood gives way, and cuts deep.',
    safeguard:
      'Clamp the lid to the bench. First cut across the grain where the notch ends, then pare toward that cut, both hands behind the edge.',
    sources: [],
  },
  knife: {
    about: 'marking knives',
    hazard: 'A marking knife slips toward the hand that holds the rule or the parts.',
    safeguard:
      'Clamp the parts together while you mark. That hand stays behind the edge, and the knife moves away from it.',
    sources: [],
  },
  setUp: {
    about: 'setting a machine',
    hazard: 'A blade or cutter that starts, or still runs down, cuts the hand that sets it or clears it.',
    safeguard:
      'Unplug the machine, or take its battery out, before you set blade, fence or jig or change a backing block. Brush chips away with the cutter at rest. Guards back on before the next cut.',
    sources: [],
  },
  testCut: {
    about: 'test cuts',
    hazard: 'A short offcut held by hand at a blade or cutter is thrown, and can draw the hand after it.',
    safeguard:
      'Try in a piece large enough to hold safely, or clamp it like a part. Guards on, hands at least 75 mm (3 in) from the blade, which is common practice.',
    sources: [],
  },
  keys: {
    about: 'slots for keys',
    hazard:
      'A box on its edge has nothing flat to stand on, and the blade comes out of it where a hand would hold it.',
    safeguard:
      'Clamp the box in a cradle made for it that covers the blade there, with that place marked and both hands behind it. A hand saw does it well.',
    sources: [],
  },
  sawnLid: {
    about: 'sawing off the lid',
    hazard: 'The guard is usually off for this cut, the box is short and the last cut can grab.',
    safeguard:
      'At a machine only with an instructor beside you; a hand saw along a line, or a band saw with a fence, is the safer way.',
    sources: ['osha-1910-213'],
  },
  dust: {
    about: 'dust',
    hazard:
      'All wood dust harms, of softwood and boards too, and some woods cause allergies; dust of hardwoods can cause cancer of the nose.',
    safeguard: 'Extract it where it is made, wear a fitted mask, do not sweep it dry.',
    sources: ['hse-wood-dust', 'osha-wood-dust', 'niosh-wood-dust', 'iarc-62', 'iarc-100c'],
  },
  panelFinish: {
    about: 'sanding and finishing a panel',
    hazard:
      'Sanding dust of any wood harms, vapors of a finish burn and harm, and rags with a drying oil can take fire by themselves.',
    safeguard:
      'Extract the dust and wear a fitted mask. Air the room while a finish dries, keep flames away, follow its label; spread rags flat outdoors in one layer, or put them in water in a lidded metal can.',
    sources: ['hse-wood-dust', 'nfpa-oily-rags', 'osha-1910-106'],
  },
  rags: {
    about: 'finishes and oily rags',
    hazard:
      'Finishes give off vapors that burn and harm. Rags with a drying oil heat up and can take fire by themselves within hours.',
    safeguard:
      'Air the room, keep flames away, follow the label. Spread rags flat outdoors in one layer, or put them in water in a lidded metal can; never in a heap or a bin.',
    sources: ['nfpa-oily-rags', 'osha-1910-106'],
  },
} as const satisfies Record<string, Caution>;

export type CautionName = keyof typeof all;
export const cautions: Readonly<Record<CautionName, Caution>> = all;
export const cautionNames = Object.keys(all) as readonly CautionName[];
export const isCautionName = (name: string): name is CautionName => Object.hasOwn(all, name);

/** The rider to every caution. */
export const rider =
  'Your machine’s and product’s manual, your local rules and a qualified instructor come before this sheet.';
