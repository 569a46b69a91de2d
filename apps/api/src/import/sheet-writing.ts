import { Injectable } from '@nestjs/common';
import type { NewEntry, WriteImport } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { authorOf, contentId, LedgerWriter } from '../entry/entry.module.ts';
import type { Caller } from '../http/caller.ts';
import type { Progress } from './import-progress.ts';
import { ImportQueries } from './import.queries.ts';
import { factToKeep, ImportService, type SheetAtHand } from './import.service.ts';
import { entriesOfSheet, sayingOf, type SheetEntry } from './sheet-entries.ts';
import { SheetRecords } from './sheet-records.ts';

/** Writes a sheet into the books, inside one transaction. */
@Injectable()
export class SheetWriting {
  constructor(
    private readonly imports: ImportService,
    private readonly queries: ImportQueries,
    private readonly records: SheetRecords,
    private readonly ledger: LedgerWriter,
  ) {}

  async write(sql: UnitOfWork, caller: Caller, id: string, how: WriteImport, progress: Progress): Promise<void> {
    if (!(await this.queries.lockImports(sql, caller.programmeId))) throw new DomainError('import/under-way', 'another sheet of this programme is being written');
    const sheet = await this.imports.atHand(sql, caller, id);
    const { faults, changes, facts } = sheet.reading;
    if (faults.length > 0) throw new DomainError('import/has-faults', 'mend the rows that the dry run names, then bring the sheet again', { faults: faults.length });

    await this.records.writeMissing(sql, caller.programmeId, facts, sheet.known);
    const writtenAt = new Date().toISOString();
    const added = entriesOfSheet(caller.programmeId, facts, new Set(changes.added), sheet.plan, sheet.known, writtenAt);
    const replaced = how.replaceChanged ? await this.#corrections(sql, caller, sheet, writtenAt) : [];
    const flags = await this.#take(sql, caller, [...added, ...replaced].map(({ entry }) => entry), progress);
    await keepRows(sql, caller.programmeId, id, added);
    await keepChangedRows(sql, id, replaced);
    const result = { written: added.length, replaced: replaced.length, same: changes.same.length, flags };
    await sql.rows("UPDATE import_sheet SET state = 'written', failure = NULL, result = $2 WHERE id = $1", [id, JSON.stringify(result)]);
  }

  /** @throws DomainError as the first entry refused says: an import is all or nothing */
  async #take(sql: UnitOfWork, caller: Caller, entries: readonly NewEntry[], progress: Progress): Promise<number> {
    const items = await this.ledger.writeSheet(sql, authorOf(caller), entries, (written) => {
      progress.done = written;
    });
    const problem = items.find(({ status }) => status === 'refused')?.problem;
    if (problem) throw new DomainError(problem.type.replace('/problems/', ''), problem.detail ?? problem.title);
    return this.queries.flagsAt(sql, entries.map(({ id }) => id));
  }

  /** A row that says something else than last time answers its entry with a correction. */
  async #corrections(sql: UnitOfWork, caller: Caller, { reading, plan, known }: SheetAtHand, writtenAt: string): Promise<(SheetEntry & { corrects: string })[]> {
    const { changed } = reading.changes;
    const versions = await this.queries.latestVersions(sql, changed.map(({ earlier }) => earlier.entryId));
    return changed.map(({ fact, earlier: { entryId } }) => {
      const sawVersion = versions.get(entryId) ?? entryId;
      const instead = { observedOn: fact.day, saying: sayingOf(fact, caller.programmeId, plan, known) };
      const entry: NewEntry = {
        id: contentId(caller.programmeId, 'replaced', entryId, sawVersion, JSON.stringify(instead)),
        observedOn: fact.day, writtenAt,
        saying: { kind: 'replaced', entryId, sawVersion, reason: 'the log sheet says otherwise now', instead },
      };
      return { fact, entry, corrects: entryId };
    });
  }
}

async function keepRows(sql: UnitOfWork, programmeId: string, importId: string, rows: readonly SheetEntry[]): Promise<void> {
  await sql.rows(
    `INSERT INTO import_row (programme_id, entry_id, import_id, row_number, fact)
     SELECT $1, entry_id, $2, row_number, fact FROM jsonb_to_recordset($3::jsonb) AS kept (entry_id uuid, row_number int, fact jsonb)`,
    [programmeId, importId, JSON.stringify(rows.map(({ fact, entry }) => ({ entry_id: entry.id, row_number: fact.row, fact: factToKeep(fact) })))],
  );
}

async function keepChangedRows(sql: UnitOfWork, importId: string, rows: readonly (SheetEntry & { corrects: string })[]): Promise<void> {
  await sql.rows(
    `UPDATE import_row r SET fact = kept.fact, import_id = $1, row_number = kept.row_number
     FROM jsonb_to_recordset($2::jsonb) AS kept (entry_id uuid, row_number int, fact jsonb) WHERE r.entry_id = kept.entry_id`,
    [importId, JSON.stringify(rows.map(({ fact, corrects }) => ({ entry_id: corrects, row_number: fact.row, fact: factToKeep(fact) })))],
  );
}
