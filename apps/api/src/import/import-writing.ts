import { Injectable, Logger } from '@nestjs/common';
import type { Import, NewEntry, WriteImport } from '@sprigline/contract';
import { DomainError, type SheetFact } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { EntryWriting } from '../entry/entry-writing.ts';
import type { Caller } from '../http/caller.ts';
import { contentId } from './content-id.ts';
import { ImportProgress, type Progress } from './import-progress.ts';
import { ImportQueries } from './import.queries.ts';
import { factToKeep, ImportService, type SheetAtHand } from './import.service.ts';
import { entriesOfSheet, sayingOf, type SheetEntry } from './sheet-entries.ts';
import { SheetRecords } from './sheet-records.ts';

/** Entries written at a time: enough to be quick, few enough to show progress. */
const CHUNK = 2_000;

/** Writes a sheet into the books: all of it, or nothing. */
@Injectable()
export class ImportWriting {
  readonly #log = new Logger(ImportWriting.name);

  constructor(
    private readonly database: Database,
    private readonly imports: ImportService,
    private readonly parts: ImportParts,
    private readonly progress: ImportProgress,
  ) {}

  /**
   * Begins writing and answers at once.
   *
   * @throws DomainError `import/under-way`, `import/written-already`, `import/plan-missing`
   */
  async start(caller: Caller, id: string, how: WriteImport): Promise<Import> {
    const before = await this.imports.one(caller, id);
    if (this.progress.of(id)) throw new DomainError('import/under-way', 'it is being written: wait until it is done');
    if (before.state === 'written') throw new DomainError('import/written-already', 'bring the sheet as a new import: only what is new will be written');
    if (!before.plan) throw new DomainError('import/plan-missing', 'say which columns and words mean what, then try again');

    const progress = this.progress.begin(id, before.guess.rows);
    void this.#run(caller, id, how, progress).finally(() => this.progress.end(id));
    return { ...before, state: 'writing', progress: { ...progress } };
  }

  async #run(caller: Caller, id: string, how: WriteImport, progress: Progress): Promise<void> {
    try {
      await this.database.inTransaction(caller, (sql) => this.parts.write(sql, caller, id, how, progress));
    } catch (error) {
      const failure = error instanceof DomainError ? error.code : 'broken';
      if (!(error instanceof DomainError)) this.#log.error('an import broke', error instanceof Error ? error.stack : undefined);
      await this.database.inTransaction(caller, (sql) => sql.rows("UPDATE import_sheet SET state = 'failed', failure = $2 WHERE id = $1 AND state <> 'written'", [id, failure]));
    }
  }
}

/** What writing a sheet is made of, inside one transaction. */
@Injectable()
export class ImportParts {
  constructor(
    private readonly imports: ImportService,
    private readonly queries: ImportQueries,
    private readonly records: SheetRecords,
    private readonly entries: EntryWriting,
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
    const flags = await this.#inChunks(sql, caller, [...added, ...replaced], progress);
    await keepRows(sql, caller.programmeId, id, added);
    await keepChangedRows(sql, id, replaced);
    const result = { written: added.length, replaced: replaced.length, same: changes.same.length, flags };
    await sql.rows("UPDATE import_sheet SET state = 'written', failure = NULL, result = $2 WHERE id = $1", [id, JSON.stringify(result)]);
  }

  async #inChunks(sql: UnitOfWork, caller: Caller, entries: readonly SheetEntry[], progress: Progress): Promise<number> {
    let flags = 0;
    for (let from = 0; from < entries.length; from += CHUNK) {
      const chunk = entries.slice(from, from + CHUNK).map(({ entry }) => entry);
      flags += await this.#chunk(sql, caller, chunk);
      progress.done += chunk.length;
    }
    return flags;
  }

  /** @throws DomainError as the first entry refused says: an import is all or nothing */
  async #chunk(sql: UnitOfWork, caller: Caller, chunk: readonly NewEntry[]): Promise<number> {
    const items = await this.entries.write(sql, caller, { door: 'import', entries: chunk });
    const refused = items.find(({ status }) => status === 'refused');
    if (refused?.problem) throw new DomainError(refused.problem.type.replace('/problems/', ''), refused.problem.detail ?? refused.problem.title);
    return items.reduce((sum, { flags }) => sum + flags.length, 0);
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
    [programmeId, importId, JSON.stringify(rows.map(({ fact, entry }) => ({ entry_id: entry.id, row_number: fact.row, fact: keep(fact) })))],
  );
}

async function keepChangedRows(sql: UnitOfWork, importId: string, rows: readonly (SheetEntry & { corrects: string })[]): Promise<void> {
  await sql.rows(
    `UPDATE import_row r SET fact = kept.fact, import_id = $1, row_number = kept.row_number
     FROM jsonb_to_recordset($2::jsonb) AS kept (entry_id uuid, row_number int, fact jsonb) WHERE r.entry_id = kept.entry_id`,
    [importId, JSON.stringify(rows.map(({ fact, corrects }) => ({ entry_id: corrects, row_number: fact.row, fact: keep(fact) })))],
  );
}

const keep = (fact: SheetFact) => factToKeep(fact);
