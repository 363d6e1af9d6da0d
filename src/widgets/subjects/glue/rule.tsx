/** The rules of this subject, for the reader's box. */
import { glue } from '../../../box/subjects/glue/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(glue);
