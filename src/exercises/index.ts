/** Every exercise, in the order of the work. */

import type { Exercise } from './core/exercise.ts';
import { e1 } from './tasks/e1.ts';
import { e2 } from './tasks/e2.ts';
import { e3 } from './tasks/e3.ts';
import { e4 } from './tasks/e4.ts';
import { e5 } from './tasks/e5.ts';
import { e6 } from './tasks/e6.ts';
import { e7 } from './tasks/e7.ts';
import { e8 } from './tasks/e8.ts';
import { e9 } from './tasks/e9.ts';
import { e10 } from './tasks/e10.ts';
import { e11 } from './tasks/e11.ts';
import { e12 } from './tasks/e12.ts';

export const exercises: readonly Exercise[] = [e1, e2, e3, e4, e5, e6, e7, e8, e9, e10, e11, e12];
