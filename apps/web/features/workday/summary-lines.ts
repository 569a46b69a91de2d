import type { WorkdaySpecies, WorkdaySummary } from '@sprigline/contract';

/** What can be done with plants, in the order in which they go through it. */
const ACTS = ['stuck', 'received', 'lifted', 'potted', 'planted', 'givenOut', 'counted', 'died', 'notRooted', 'thrownOut', 'unaccounted'] as const;
export type SummaryAct = (typeof ACTS)[number];

const plantsOf = (species: WorkdaySpecies, act: SummaryAct): number => (act === 'counted' ? species.countedAlive : species[act]);

/** Only what happened that day; the acts that groups publish are named even when nothing came of them. */
const ALWAYS: readonly SummaryAct[] = ['stuck', 'potted', 'counted', 'planted', 'died'];

export interface SummaryLine {
  readonly act: SummaryAct;
  /** By species, in the order of the summary. */
  readonly plants: readonly number[];
}

export function summaryLines({ species }: WorkdaySummary): SummaryLine[] {
  return ACTS.map((act) => ({ act, plants: species.map((one) => plantsOf(one, act)) })).filter(({ act, plants }) => ALWAYS.includes(act) || plants.some((n) => n > 0));
}

/** The words that a summary as text is made of. */
export interface SummaryWords {
  readonly title: string;
  /** Who was there and how long, a line each. */
  readonly who: readonly string[];
  readonly nameOf: (species: WorkdaySpecies) => string;
  readonly actOf: (act: SummaryAct) => string;
  readonly inBatches: (n: number) => string;
  readonly nothing: string;
}

/** The one page as plain text, for a message or a newsletter. */
export function summaryText(summary: WorkdaySummary, { title, who, nameOf, actOf, inBatches, nothing }: SummaryWords): string {
  const lines = summaryLines(summary);
  const bySpecies = summary.species.map((species, at) => {
    const acts = lines.flatMap(({ act, plants }) => {
      const n = plants[at] ?? 0;
      if (n === 0) return [];
      return `${actOf(act).toLowerCase()} ${n}${act === 'counted' ? ` ${inBatches(species.batchesCounted)}` : ''}`;
    });
    return `${nameOf(species)}: ${acts.join(', ') || '–'}`;
  });
  return [title, ...who, ...(bySpecies.length > 0 ? bySpecies : [nothing])].join('\n');
}
