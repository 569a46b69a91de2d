import type { Opinion } from './opinion.ts';
import type { SecondOpinionQuestion } from './question.ts';
import type { Range } from './species-row.ts';
import { withinUsual } from './within.ts';

/** Common practice, no published figure: about twelve hours while there are no roots. */
const USUAL_HOURS: Range = [10, 14];

/** Hours of lamps a day, as the place is kept. */
export const lightOpinion = ({ lines, species }: SecondOpinionQuestion): Opinion =>
  withinUsual(lines, [], { about: 'light', of: ({ lightHours }) => lightHours, ofPast: () => undefined, row: species?.lightHours, usual: USUAL_HOURS });
