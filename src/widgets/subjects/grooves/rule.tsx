/** The rules of this subject, for the reader's box. */
import { grooves } from '../../../box/subjects/grooves/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(grooves);
