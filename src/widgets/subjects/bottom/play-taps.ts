/**
 * Plays taps on the reader's own loudspeaker, made here from their notes: nothing is fetched but this file, and that only
 * when somebody asks for a sound. The volume comes up from nothing before each tap and goes down when it is stopped.
 */
import type { TapNote } from '../../../calc/bottom/tap-notes.ts';
import { soundsOf } from '../../../calc/bottom/tap-sound.ts';

export interface Taps {
  readonly taps: readonly (readonly TapNote[])[];
  /** How long the knuckle stays, ms. */
  readonly contact: number;
  /** Each as loud as the others, instead of as loud as it is beside them. */
  readonly alike: boolean;
  /** Which are played, one after another. */
  readonly order: readonly number[];
  /** 0 to 100. */
  readonly volume: number;
  /** One begins. */
  readonly begins: (which: number) => void;
  readonly ends: () => void;
}

export interface Playing {
  volume(to: number): void;
  stop(): void;
}

/** Before the first tap, from one to the next after it has faded, and for a change of volume, s. */
const [lead, pause, ramp] = [0.15, 0.35, 0.04] as const;
/** An ear hears equal steps of the square as about equal. */
const gainAt = (volume: number) => (volume / 100) ** 2;

let context: AudioContext | undefined;

/** @returns undefined where this browser makes no sound. */
export function playTaps({ taps, contact, alike, order, volume, begins, ends }: Taps): Playing | undefined {
  if (typeof AudioContext === 'undefined') return undefined;
  context ??= new AudioContext();
  const audio = context;
  void audio.resume();
  const gain = new GainNode(audio, { gain: 0 });
  gain.connect(audio.destination);
  gain.gain.linearRampToValueAtTime(gainAt(volume), audio.currentTime + lead - ramp);
  const sounds = soundsOf(taps, contact, audio.sampleRate, alike);
  const timers: ReturnType<typeof setTimeout>[] = [];
  let at = lead;
  const sources = order.map((which) => {
    const samples = sounds[which]!;
    const buffer = new AudioBuffer({ length: samples.length, sampleRate: audio.sampleRate });
    buffer.copyToChannel(samples, 0);
    const source = new AudioBufferSourceNode(audio, { buffer });
    source.connect(gain);
    source.start(audio.currentTime + at);
    timers.push(setTimeout(() => begins(which), 1000 * at));
    at += buffer.duration + pause;
    return source;
  });
  const over = () => {
    gain.disconnect();
    ends();
  };
  timers.push(setTimeout(over, 1000 * at));
  return {
    volume(to) {
      gain.gain.setTargetAtTime(gainAt(to), audio.currentTime, ramp);
    },
    stop() {
      timers.forEach(clearTimeout);
      gain.gain.cancelScheduledValues(audio.currentTime);
      gain.gain.setTargetAtTime(0, audio.currentTime, ramp / 4);
      for (const source of sources) source.stop(audio.currentTime + ramp);
      setTimeout(over, 1000 * ramp);
    },
  };
}
