import { type Opinion, notTold } from './opinion.ts';
import { bothSides, isHeard } from './own-share.ts';
import type { SecondOpinionQuestion, StickingLine } from './question.ts';
import { labelsOf } from './within.ts';

export type AgeClass = 'juvenile' | 'young' | 'mature' | 'old';

/** Cuttings root ever more seldom with the age of their tree; these steps are common practice, the fall itself is published. */
const FEW_YEARS = 5;
const TEN = 10;
const HUNDRED = 100;
/** Own old trees that root at least so often as the younger ones root nearly as well. A working rule. */
const NEARLY = 0.8;

type Band = 'few-years' | 'to-ten' | 'to-hundred' | 'over-hundred';

/** How old the tree is, as far as it was told: in years, or that it is called juvenile or old. */
function bandOf({ ageYears, ageClass }: Pick<StickingLine, 'ageYears' | 'ageClass'>): Band | undefined {
  if (ageYears === undefined) return ageClass === 'juvenile' ? 'few-years' : ageClass === 'old' ? 'over-hundred' : undefined;
  if (ageYears < FEW_YEARS) return 'few-years';
  if (ageYears <= TEN) return 'to-ten';
  return ageYears <= HUNDRED ? 'to-hundred' : 'over-hundred';
}

/**
 * Donor trees so old that rooting is rare.
 *
 * Over a hundred years is unusual by common practice, unless own cuttings of such trees, enough of them, rooted nearly
 * as often as those of younger ones. Source of the fall with age: Girouard RM 1974, N. Z. J. For. Sci. 4:140-149 (spruce);
 * Libby WJ, Conkle MT 1966, For. Sci. 12:484-502 (Monterey pine).
 */
export function ageOpinion({ lines, past }: SecondOpinionQuestion): Opinion {
  const told = lines.filter((line) => bandOf(line) !== undefined);
  if (told.length === 0) return notTold('donor-age');
  const old = told.filter((line) => bandOf(line) === 'over-hundred');
  const facts = { few: count(told, 'few-years'), ten: count(told, 'to-ten'), hundred: count(told, 'to-hundred'), over: count(told, 'over-hundred'), notTold: new Set(lines.filter((line) => !told.includes(line)).map(({ donorId }) => donorId)).size };
  const sides = bothSides(past, ({ ageYears }) => (ageYears === undefined ? undefined : ageYears > HUNDRED));
  if (old.length === 0) return { about: 'donor-age', verdict: 'usual', basis: 'common-practice', says: 'young-enough', donors: [], facts, like: sides.unlike, unlike: sides.like };

  const { like, unlike } = sides;
  const isOwn = isHeard(like) && isHeard(unlike);
  if (isOwn && like.goneOn * unlike.settled >= NEARLY * unlike.goneOn * like.settled) return { about: 'donor-age', verdict: 'usual', basis: 'own-history', says: 'old-roots-as-well', donors: labelsOf(old), facts, ...sides };
  return { about: 'donor-age', verdict: 'unusual', basis: isOwn ? 'own-history' : 'common-practice', says: isOwn ? 'old-roots-less' : 'old', donors: labelsOf(old), facts, ...sides };
}

const count = (lines: readonly StickingLine[], band: Band): number => new Set(lines.filter((line) => bandOf(line) === band).map(({ donorId }) => donorId)).size;
