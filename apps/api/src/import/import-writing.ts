import { Injectable, Logger } from '@nestjs/common';
import type { Import, WriteImport } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { whereItBroke } from '../http/where-it-broke.ts';
import { ImportProgress, type Progress } from './import-progress.ts';
import { ImportService } from './import.service.ts';
import { SheetWriting } from './sheet-writing.ts';

/** Has sheets written after the answer has gone out, and says how far they are. */
@Injectable()
export class ImportWriting {
  readonly #log = new Logger(ImportWriting.name);

  constructor(
    private readonly database: Database,
    private readonly imports: ImportService,
    private readonly sheets: SheetWriting,
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
      await this.database.inTransaction(caller, (sql) => this.sheets.write(sql, caller, id, how, progress));
    } catch (error) {
      const failure = error instanceof DomainError ? error.code : 'broken';
      if (!(error instanceof DomainError)) this.#log.error('an import broke', whereItBroke(error));
      await this.database.inTransaction(caller, (sql) => sql.rows("UPDATE import_sheet SET state = 'failed', failure = $2 WHERE id = $1 AND state <> 'written'", [id, failure]));
    }
  }
}
