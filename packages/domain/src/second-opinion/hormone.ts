import { type Opinion, noEvidence, notTold } from './opinion.ts';
import type { SecondOpinionQuestion, StickingLine, Wood } from './question.ts';
import type { Range } from './species-row.ts';
import { withinUsual } from './within.ts';

/** Common practice by how hard the wood is, talc or quick dip, ppm of IBA (Hartmann HT, Kester DE et al. 2002; from memory). */
const BY_WOOD: Readonly<Record<Wood, Range>> = { softwood: [500, 1_250], semiHardwood: [1_000, 3_000], hardwood: [2_500, 8_000] };
/** A soak of 12 to 24 hours is weak by nature; common practice, the same source. */
const SOAK: Range = [20, 200];

/**
 * Hormone and its strength, for the wood.
 *
 * A soak is held against soaks; talc and dips against the species row, else own history, else what is usual for the wood.
 * Where the species is in no table and nobody told the wood, there is no evidence either way.
 */
export function hormoneOpinion({ lines, species, past }: SecondOpinionQuestion): Opinion {
  const told = lines.filter(({ hormonePpm }) => hormonePpm !== undefined);
  if (told.length === 0) return notTold('hormone');
  const without = told.filter(({ hormonePpm }) => hormonePpm === 0);
  // In a comparison some go without on purpose: the others are looked at.
  const dosed = without.length > 0 && without.length < told.length ? told.filter(({ hormonePpm }) => hormonePpm !== 0) : told;
  const soaked = dosed.every(({ hormoneForm }) => hormoneForm === 'soak');
  const row = soaked ? undefined : species?.ppm;
  const usual = soaked ? SOAK : woodRange(dosed);
  const opinion = withinUsual(dosed, past, { about: 'hormone', of: ({ hormonePpm }) => hormonePpm, ofPast: ({ hormonePpm }) => (soaked ? undefined : hormonePpm), row, usual });
  if (opinion.verdict === 'no-evidence') return noEvidence('hormone', dosed.some(({ wood }) => wood === undefined) ? 'wood-not-told' : 'unknown', opinion.facts);
  return dosed === told && without.length === told.length && opinion.verdict === 'unusual' ? { ...opinion, says: 'none-used' } : opinion;
}

/** Lines of different wood have no range in common. */
function woodRange(lines: readonly StickingLine[]): Range | undefined {
  const woods = new Set(lines.map(({ wood }) => wood));
  const [only] = woods;
  return woods.size === 1 && only !== undefined ? BY_WOOD[only] : undefined;
}
