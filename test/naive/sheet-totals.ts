import { type Effect, type Entry, STAGES, type Stage } from '@sprigline/domain';
import type { SheetBatch } from './sheet.ts';

/** What the totals need of anybody's books. */
export interface Account {
  readonly balance: number;
  readonly movements: readonly { effect: Effect; n: number; toStage?: Stage | undefined }[];
  readonly flags: readonly { code: string }[];
}

export const concerning = (batchId: string, entries: readonly Entry[]): Entry[] =>
  entries.filter(({ saying }) =>
    ('batchId' in saying && saying.batchId === batchId) || ('toBatchId' in saying && saying.toBatchId === batchId));

export const sumOf = ({ movements }: Account, ...effects: Effect[]): number =>
  movements.filter(({ effect }) => effects.includes(effect)).reduce((sum, { n }) => sum + n, 0);

const total = (accounts: readonly Account[], ...effects: Effect[]): number =>
  accounts.reduce((sum, account) => sum + sumOf(account, ...effects), 0);

/** Net of what was taken back, as the group would report it. */
export function overall(accounts: readonly Account[]): Record<string, number> {
  const flags: Record<string, number> = {};
  for (const { code } of accounts.flatMap((account) => account.flags)) flags[code] = (flags[code] ?? 0) + 1;
  return {
    batches: accounts.length,
    here: accounts.reduce((sum, { balance }) => sum + balance, 0),
    stuck: total(accounts, 'stuck'),
    died: total(accounts, 'died'),
    unaccounted: total(accounts, 'unaccounted') - total(accounts, 'takenBack'),
    notRooted: total(accounts, 'notRooted'),
    thrownOut: total(accounts, 'thrownOut'),
    givenOut: total(accounts, 'givenOut'),
    found: total(accounts, 'found'),
    takenBack: total(accounts, 'takenBack'),
    ...flags,
  };
}

/** One stage of a funnel. Who skips a stage came into it and went on from it all the same. */
export function stageTotals(stage: Stage, batches: readonly SheetBatch[], accounts: ReadonlyMap<string, Account>) {
  const here = batches.filter((batch) => batch.stage === stage);
  const books = here.map((batch) => accountOf(batch, accounts));
  const skipped = batches
    .flatMap((batch) => accountOf(batch, accounts).movements.map((movement) => ({ from: batch.stage, ...movement })))
    .filter(({ effect, from, toStage }) => effect === 'wentOn' && isBetween(stage, from, toStage))
    .reduce((sum, { n }) => sum + n, 0);
  const withPlants = here.filter((batch) => accountOf(batch, accounts).balance > 0);
  return {
    cameIn: total(books, 'stuck', 'received', 'found', 'wentIn') + skipped,
    goneOn: total(books, 'wentOn') + skipped,
    died: total(books, 'died'),
    unaccounted: total(books, 'unaccounted') - total(books, 'takenBack'),
    notRooted: total(books, 'notRooted'),
    thrownOut: total(books, 'thrownOut'),
    givenOut: total(books, 'givenOut', 'givenAcross'),
    here: books.reduce((sum, { balance }) => sum + balance, 0),
    donorsIn: new Set(here.map(({ donor }) => donor)).size,
    donorsHere: new Set(withPlants.map(({ donor }) => donor)).size,
  };
}

const isBetween = (stage: Stage, from: Stage, to: Stage | undefined): boolean =>
  to !== undefined && STAGES.indexOf(from) < STAGES.indexOf(stage) && STAGES.indexOf(stage) < STAGES.indexOf(to);

function accountOf(batch: SheetBatch, accounts: ReadonlyMap<string, Account>): Account {
  const account = accounts.get(batch.id);
  if (account === undefined) throw new Error(`no books of ${batch.id}`);
  return account;
}
