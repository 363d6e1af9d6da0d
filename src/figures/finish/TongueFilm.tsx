/** What three coats on both faces of a lid's tongue take of its play is marked, and then drawn. */
import { COAT, filmBuild } from '../../calc/finish/finish-film.ts';
import type { UnitSystem } from '../../units/index.ts';
import { TongueInGroove } from './TongueInGroove.tsx';

/** Three brushed coats on both faces, as the guess has them. */
const threeCoats = { f: 2, n: 3, h: COAT } as const;
/** What they take, mm. */
export const filmTaken = (): number => filmBuild.compute(threeCoats);

export const TongueFilm = ({
  system,
  mark,
  open,
}: {
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}) => <TongueInGroove film={open ? threeCoats : undefined} system={system} mark={mark} />;
