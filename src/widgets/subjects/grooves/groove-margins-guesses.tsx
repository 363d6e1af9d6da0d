/** Guesses of the lesson on groove margins. */
import { LipGuess, lipFrame, lipNeeded, lipRange } from '../../../figures/grooves/LipGuess.tsx';
import { strengthRange, WebGuess, webFrame } from '../../../figures/grooves/WebGuess.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

export const grooveMarginsGuesses: Readonly<Record<string, GuessSpec>> = {
  'lip-push': {
    type: 'number',
    label: 'your lip',
    event: 'Push',
    field: { kind: 'length', step: 0.1, inchStep: INCH / 64, digits: 1, ...lipRange },
    figure: LipGuess,
    frame: lipFrame,
    start: () => 0,
    truth: lipNeeded,
    controls: ['push'],
    answer: (v) => (
      <>
        It splits at a push of <Quantity value={v.push} kind="force" digits={0} /> until it is{' '}
        <Quantity value={lipNeeded(v)} kind="length" as="fine" round="up" /> thick.
      </>
    ),
  },
  'half-way-groove': {
    type: 'number',
    label: 'left of the strength',
    event: 'Bend it',
    field: { kind: 'percent', step: 1, digits: 0, ...strengthRange },
    pins: (system) =>
      system === 'mm'
        ? { wall: 10, grooveDepth: 5, lidGrooveDepth: 5 }
        : { wall: (3 / 8) * INCH, grooveDepth: (3 / 16) * INCH, lidGrooveDepth: (3 / 16) * INCH },
    figure: WebGuess,
    frame: webFrame,
    start: () => 100,
    truth: (v) => v.webStrength,
    controls: ['grooveDepth'],
    answer: (v) => (
      <>
        <Quantity value={v.webStrength} kind="percent" digits={0} /> of the strength are left, and{' '}
        <Quantity value={v.webStiffness} kind="percent" digits={0} /> of the stiffness.
      </>
    ),
  },
};
