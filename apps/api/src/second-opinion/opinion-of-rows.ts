import type { StickingOpinion, TaxonDays } from '@sprigline/contract';
import { dayAfter, expectedOfLines, honestVerdictDays, type PastSticking, rootingChance, secondOpinion, speciesRow, type StickingLine } from '@sprigline/domain';
import type { AroundRow, StuckRow } from './stuck.queries.ts';

export interface Known {
  readonly past: readonly PastSticking[];
  readonly days: TaxonDays & { readonly firstRoots?: number };
  readonly around: AroundRow | undefined;
}

/** Rows of one stand, species and day, held against what is known. */
export function opinionOfRows(rows: readonly StuckRow[], first: StuckRow, { past, days, around }: Known): StickingOpinion {
  const { standId, stand, taxonId, taxon, scientificName, stuckOn } = first;
  const lines = rows.map(lineOf);
  const donors = [...new Set(lines.map(({ donorId }) => donorId))];
  const species = speciesRow(scientificName);
  const chance = rootingChance(past, species);
  const living = around?.living ?? [];
  const opinions = secondOpinion({
    lines, species, past, day: stuckOn, firstCheck: days.firstCheck, verdict: days.verdict, ownFirstRootsDays: days.firstRoots,
    donorsWanted: around?.wanted ?? undefined,
    donorsAlready: living.filter(({ donorId }) => !donors.includes(donorId)).length,
    donorsElsewhere: living.filter(({ donorId, houses }) => houses.some((house) => !lines.some((line) => line.donorId === donorId && line.houseId === house))).map(({ donorId }) => donorId),
  });
  return {
    stand: standId === null ? null : { id: standId, name: stand ?? '' }, taxon: { id: taxonId, name: taxon }, stuckOn,
    cuttings: lines.reduce((sum, { cuttings }) => sum + cuttings, 0), donors: donors.length,
    species: species ? { name: species.name, source: species.source } : null,
    opinions: opinions.map((one) => ({ ...one, donors: [...one.donors], facts: { ...one.facts } })),
    chance, expected: expectedOfLines(donors.map((id) => sumOf(lines, id)), chance),
    firstCheckOn: dayAfter(stuckOn, days.firstCheck.days), verdictOn: dayAfter(stuckOn, honestVerdictDays({ species, verdict: days.verdict })),
  };
}

/** What is not known of which donor tree is a donor of its own. */
function lineOf({ donorId, donorLabel, line }: StuckRow, at: number): StickingLine {
  const told = Object.fromEntries(Object.entries(line).filter(([, value]) => value !== null)) as Omit<StickingLine, 'donorId' | 'donorLabel'>;
  return { ...told, donorId: donorId ?? `unknown ${at}`, donorLabel: donorLabel ?? '?' };
}

const sumOf = (lines: readonly StickingLine[], donor: string): number => lines.filter(({ donorId }) => donorId === donor).reduce((sum, { cuttings }) => sum + cuttings, 0);
