/** The end of a box cut through: the wood that stays around both grooves. */
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';
import { Section } from '../walls/Section.tsx';

const GrooveMarginsSmall: SmallFigure = ({ values }) => (
  <SmallDrawing view={[0, 0, values.outsideHeight * 1.2, values.outsideHeight]}>
    <Section values={values} />
  </SmallDrawing>
);

export default GrooveMarginsSmall;
