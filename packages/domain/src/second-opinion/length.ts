import type { Opinion } from './opinion.ts';
import type { SecondOpinionQuestion } from './question.ts';
import type { Range } from './species-row.ts';
import { withinUsual } from './within.ts';

/** Common practice, no published figure: a cutting shorter than a finger dries, one beyond 13 cm loses more water than it takes up. */
const USUAL_CM: Range = [5, 13];

/** Length of the cuttings, in cm. */
export const lengthOpinion = ({ lines, species, past }: SecondOpinionQuestion): Opinion =>
  withinUsual(lines, past, { about: 'length', of: ({ lengthCm }) => lengthCm, ofPast: ({ lengthCm }) => lengthCm, row: species?.lengthCm, usual: USUAL_CM });
