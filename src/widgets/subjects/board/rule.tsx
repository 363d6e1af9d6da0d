/** The rules of this subject, for the reader's box. */
import { board } from '../../../box/subjects/board/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(board);
