/** Guesses of the lesson on lift-off and hinged lids. */
import { HingeSide, opensBy, springFrame, springRange } from '../../../figures/lid/HingeSide.tsx';
import { RoomGuess, roomFrame, roomLeft, roomRange } from '../../../figures/lid/RoomGuess.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

/** A knuckle, and how much too deep both leaves of the guess are, mm, for a reader of either unit. */
const hinge = { knuckle: 5, tooDeep: 0.2 } as const;
const sawn = { kind: 'sawn', sizeFrom: 'outside' } as const;

export const otherLidGuesses: Readonly<Record<string, GuessSpec>> = {
  'room-after-finish': {
    type: 'number',
    label: 'room that is left',
    event: 'Let it dry',
    field: { kind: 'length', step: 0.02, inchStep: INCH / 1000, digits: 2, ...roomRange },
    pins: () => ({ kind: 'lift-off' }),
    figure: RoomGuess,
    frame: roomFrame,
    start: (v) => v.lidRoom,
    truth: roomLeft,
    controls: ['lidRoom'],
    answer: (v) =>
      roomLeft(v) > 0 ? (
        <>
          <Quantity value={roomLeft(v)} kind="length" as="fine" /> are left of{' '}
          <Quantity value={v.lidRoom} kind="length" as="fine" />: two faces, three coats on each.
        </>
      ) : (
        'Nothing is left: the films fill the room, and the lid sticks.'
      ),
  },
  'spring-open': {
    type: 'number',
    label: 'open at the front',
    event: 'Shut it',
    field: { kind: 'length', step: 0.5, inchStep: INCH / 32, digits: 1, ...springRange },
    pins: (system) =>
      system === 'mm'
        ? { ...sawn, wantedLength: 160, wantedWidth: 110, wantedHeight: 70, lidHeight: 18 }
        : {
            ...sawn,
            wantedLength: 6.25 * INCH,
            wantedWidth: 4.25 * INCH,
            wantedHeight: 2.75 * INCH,
            lidHeight: 0.75 * INCH,
          },
    figure: (props) => <HingeSide {...props} {...hinge} />,
    frame: springFrame,
    start: () => 0,
    truth: (v) => opensBy(v, hinge.tooDeep, hinge.knuckle),
    answer: (v) => (
      <>
        The front stands open by <Quantity value={opensBy(v, hinge.tooDeep, hinge.knuckle)} kind="length" />,{' '}
        <Quantity value={opensBy(v, hinge.tooDeep, hinge.knuckle) / hinge.tooDeep} kind="number" digits={0} />{' '}
        times the error.
      </>
    ),
  },
};
