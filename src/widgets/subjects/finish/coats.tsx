/** Labs on coats: how thick they are beside paper, and what they leave a tongue. */
import type { InputsOf } from '../../../box/core/field.ts';
import { count, fine } from '../../../box/core/inputs.ts';
import { practice } from '../../../box/core/practice.ts';
import { rowsOf } from '../../../box/core/result.ts';
import { coatsThatFit, dryFilm, LEAST_SLIP, PAPER } from '../../../calc/finish/coats.ts';
import { COAT, filmBuild, playUnderFilm } from '../../../calc/finish/finish-film.ts';
import { wetFilm } from '../../../calc/glue/glue.ts';
import { FilmsOnPaper } from '../../../figures/finish/FilmsOnPaper.tsx';
import { TongueInGroove } from '../../../figures/finish/TongueInGroove.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { lab } from '../../lesson/lab-spec.ts';

const Fine = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;
const coats = count('coats', { low: 1, high: 6, start: 3 });

/** Wiped thin, at three tenths of solids, mm. */
const WIPED = dryFilm.compute({ w: wetFilm.low, s: 0.3 });
const film = (label: string, h: number) =>
  rowsOf<{ coats: number }>()(filmBuild, (v) => ({ f: 1, n: v.coats, h }), {
    label,
    kind: 'length',
    as: 'fine',
    rule: 'finish-by-feel',
  });
const [wiped, brushed] = [film('wiped coats, on one face', WIPED), film('brushed coats, on one face', COAT)];

/** mm */
interface Found {
  readonly wiped: number;
  readonly brushed: number;
  readonly wipedCoat: number;
  readonly brushedCoat: number;
}

export const filmsLab = lab({
  title: 'Coats beside a sheet of paper',
  own: { coats },
  controls: ['coats'],
  solve: (v): Found => ({
    wiped: wiped.work(v).value,
    brushed: brushed.work(v).value,
    wipedCoat: WIPED,
    brushedCoat: COAT,
  }),
  figure: ({ values }) => <FilmsOnPaper values={values} />,
  says: (v) => (
    <>
      Wiped, {v.coats === 1 ? 'one coat is' : `${v.coats} coats are`} <Fine of={v.wiped} />; brushed,{' '}
      <Fine of={v.brushed} />. Paper is <Fine of={PAPER} />.
    </>
  ),
  results: [wiped, brushed],
});

const ofTongue = {
  coats,
  faces: count('faces with a film: 2 of the tongue, 4 with the groove’s', { low: 1, high: 4, start: 2 }),
  coat: fine('one dry coat on one face', { low: 0.005, high: 0.06, step: 0.005, start: COAT }),
};
const onTongue = rowsOf<InputsOf<typeof ofTongue>>();
const build = (v: InputsOf<typeof ofTongue>) => ({ f: v.faces, h: v.coat });
const left = onTongue(playUnderFilm, (v) => ({ p: practice.lidSlip, n: v.coats, ...build(v) }), {
  label: 'play left in the thickness',
  kind: 'length',
  as: 'fine',
  rule: 'film-on-a-tongue',
});
const bears = onTongue(coatsThatFit, (v) => ({ p: practice.lidSlip, q: LEAST_SLIP, ...build(v) }), {
  label: 'whole coats that leave the least play',
  kind: 'count',
  round: 'down',
  rule: 'film-on-a-tongue',
});

export const tongueLab = lab({
  title: 'A tongue under its coats',
  own: ofTongue,
  controls: ['coats', 'faces', 'coat'],
  figure: ({ values: v }) => <TongueInGroove film={{ f: v.faces, n: v.coats, h: v.coat }} />,
  says: (v) => {
    const play = left.work(v).value;
    return play < 0 ? (
      <>
        The films need <Fine of={-play} /> more than there is.
      </>
    ) : (
      <>
        <Fine of={play} /> is left of <Fine of={practice.lidSlip} />.
      </>
    );
  },
  results: [left, bears],
});
