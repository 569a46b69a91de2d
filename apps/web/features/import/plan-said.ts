import type { Import, ImportPlan } from '@sprigline/contract';
import { plainSpelling } from '@sprigline/domain';
import { isTicked, text } from '../../lib/form-values.ts';

/** Fields of a sheet that a plan may name a column for, in the order in which people read them. */
export const PLAN_FIELDS = ['date', 'what', 'label', 'count', 'rooted', 'toLabel', 'donor', 'stand', 'species', 'place', 'recipe', 'cause', 'notes'] as const;

/** Without these a sheet is no log. */
export const NEEDED: ReadonlySet<string> = new Set(['date', 'what', 'label', 'count']);

/** The plan that the form tells. What it leaves out, the API refuses with the field's name. */
export function planSaid({ guess }: Import, form: FormData): unknown {
  const columns: Record<string, number> = {};
  for (const field of PLAN_FIELDS) {
    const column = text(form, `columns/${field}`);
    if (column !== undefined) columns[field] = Number(column);
  }
  const acts: Record<string, string> = {};
  for (const [index, { word }] of guess.words.entries()) {
    const act = text(form, `acts/${index}`);
    if (act !== undefined) acts[plainSpelling(word)] = act;
  }
  return {
    columns,
    acts,
    dayOrder: text(form, 'dayOrder') ?? (guess.dayOrders.length === 1 ? guess.dayOrders[0] : undefined),
    spellings: joinedSpellings(guess, form),
    looks: { withRoots: text(form, 'looks/withRoots'), withoutRoots: text(form, 'looks/withoutRoots') },
  };
}

function joinedSpellings(guess: Import['guess'], form: FormData): ImportPlan['spellings'] {
  const joined: ImportPlan['spellings'] = {};
  for (const [field, groups] of Object.entries(guess.spellings) as [keyof typeof guess.spellings, NonNullable<(typeof guess.spellings)['stand']>][]) {
    const ticked = groups.filter((_, index) => isTicked(form, `spellings/${field}/${index}`));
    joined[field] = Object.fromEntries(ticked.flatMap(({ keep, spellings }) => spellings.map(({ seen }) => [plainSpelling(seen), keep])));
  }
  return joined;
}
