import { Injectable } from '@nestjs/common';
import type { DryRun, Import, ImportPlan, UploadSheet } from '@sprigline/contract';
import { DomainError, type SheetFact } from '@sprigline/domain';
import { createHash } from 'node:crypto';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { ImportProgress } from './import-progress.ts';
import { ImportQueries, told } from './import.queries.ts';
import { KnownQueries, type KnownNames } from './known.queries.ts';
import { textOfSheet } from './sheet-bytes.ts';
import { guessOf } from './sheet-guess.ts';
import { faultsToTell, newNames, readSheet, refuseWithoutNeededColumns, type SheetReading } from './sheet-reading.ts';
import { tableOfSheet, type SheetTable } from './sheet-table.ts';

/** So many faults and changed rows are told at once; their number is always told. */
const TOLD = 500;

export interface SheetAtHand {
  readonly plan: ImportPlan;
  readonly table: SheetTable;
  readonly known: KnownNames;
  readonly reading: SheetReading;
}

@Injectable()
export class ImportService {
  constructor(
    private readonly database: Database,
    private readonly queries: ImportQueries,
    private readonly knownQueries: KnownQueries,
    private readonly progress: ImportProgress,
  ) {}

  /** Keeps the file and guesses what it holds. Nothing goes into the books. The same upload again is the same import. */
  async upload(caller: Caller, { id, fileName, encoding }: UploadSheet, content: Buffer): Promise<Import> {
    const sheet = textOfSheet(content, encoding);
    const guess = guessOf(await tableOfSheet(sheet.text), sheet.encoding);
    return this.database.inTransaction(caller, async (sql) => {
      await sql.rows(
        `INSERT INTO import_sheet (programme_id, id, file_name, content, sha256, guess, uploaded_by)
         VALUES ($1, $2, $3, $4, $5, $6, $7) ON CONFLICT (programme_id, id) DO NOTHING`,
        [caller.programmeId, id, fileName, content, createHash('sha256').update(content).digest(), JSON.stringify(guess), caller.personId],
      );
      return told(await this.queries.one(sql, id), undefined);
    });
  }

  async list(caller: Caller) {
    const rows = await this.database.inTransaction(caller, (sql) => this.queries.list(sql));
    return { imports: rows.map((row) => told(row, this.progress.of(row.id))) };
  }

  async one(caller: Caller, id: string): Promise<Import> {
    // Asked before the row: a sheet that is done in between would look neither under way nor written.
    const progress = this.progress.of(id);
    return told(await this.database.inTransaction(caller, (sql) => this.queries.one(sql, id)), progress);
  }

  /**
   * @throws DomainError `import/written-already`: what has been written is mended by another sheet
   * @throws DomainError `import/column-missing`
   */
  async decide(caller: Caller, id: string, plan: ImportPlan): Promise<Import> {
    refuseWithoutNeededColumns(plan);
    return this.database.inTransaction(caller, async (sql) => {
      const row = await this.queries.one(sql, id);
      if (row.state === 'written') throw new DomainError('import/written-already', 'bring the mended sheet as a new import');
      await sql.rows('UPDATE import_sheet SET plan = $2 WHERE id = $1', [id, JSON.stringify(plan)]);
      return told({ ...row, plan }, this.progress.of(id));
    });
  }

  /** What writing would do: every fault by row and column, what is new, what changed. Writes nothing. */
  async dryRun(caller: Caller, id: string): Promise<DryRun> {
    const { plan, table, known, reading } = await this.database.inTransaction(caller, (sql) => this.atHand(sql, caller, id));
    const { faults, facts, changes } = reading;
    return {
      faults: faultsToTell(faults.slice(0, TOLD), plan, table.headings),
      faultCount: faults.length,
      rows: table.rows.length,
      added: changes.added.length,
      same: changes.same.length,
      changed: changes.changed.slice(0, TOLD).map(({ fact, earlier }) => ({
        row: fact.row, entryId: earlier.entryId, now: summaryOf(fact), before: summaryOf(earlier.fact),
      })),
      changedCount: changes.changed.length,
      goneCount: changes.gone.length,
      byAct: countByAct(changes.added),
      newNames: newNames(facts, known),
    };
  }

  /** @throws DomainError `import/plan-missing` */
  async atHand(sql: UnitOfWork, caller: Caller, id: string): Promise<SheetAtHand> {
    const { plan, guess } = await this.queries.one(sql, id);
    if (!plan) throw new DomainError('import/plan-missing', 'say which columns and words mean what, then try again');
    const table = await tableOfSheet(textOfSheet(await this.queries.content(sql, id), guess.encoding).text);
    const known = await this.knownQueries.names(sql);
    const earlier = await this.knownQueries.earlierRows(sql);
    const today = await this.queries.today(sql, caller.zone);
    return { plan, table, known, reading: await readSheet(table, plan, known, earlier, today) };
  }
}

/** What a row says, for a person to compare with what it said before. */
const summaryOf = (fact: Omit<SheetFact, 'row'>): string =>
  [fact.day, fact.act, fact.label, String(fact.n), fact.rooted !== undefined && `rooted ${fact.rooted}`, fact.toLabel && `to ${fact.toLabel}`, fact.place, fact.cause]
    .filter(Boolean)
    .join(', ');

function countByAct(facts: readonly SheetFact[]): DryRun['byAct'] {
  const counts: DryRun['byAct'] = {};
  for (const { act } of facts) counts[act] = (counts[act] ?? 0) + 1;
  return counts;
}

export const factToKeep = ({ row: _, ...fact }: SheetFact): Omit<SheetFact, 'row'> => fact;
