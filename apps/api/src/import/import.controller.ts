import { Body, Controller, Get, HttpCode, Param, Post, Put, Query, SerializeOptions } from '@nestjs/common';
import { DryRun, Import, ImportList, ImportPath, ImportPlan, ProgrammePath, SheetContent, UploadSheet, WriteImport } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, DESK } from '../http/rule.ts';
import { ImportService } from './import.service.ts';
import { ImportWriting } from './import-writing.ts';

@Controller('programmes/:programme/imports')
export class ImportController {
  constructor(
    private readonly imports: ImportService,
    private readonly writing: ImportWriting,
  ) {}

  /** Sheets that have been brought, the newest first. */
  @Get()
  @Allow(...DESK)
  @SerializeOptions({ schema: ImportList })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<ImportList> {
    return this.imports.list(caller);
  }

  /** Brings a log sheet: the body is the file itself, as text/csv or application/octet-stream. */
  @Post()
  @Allow(...DESK)
  @SerializeOptions({ schema: Import })
  upload(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: UploadSheet }) about: UploadSheet,
    @Body({ schema: SheetContent }) content: SheetContent,
    @TheCaller() caller: Caller,
  ): Promise<Import> {
    return this.imports.upload(caller, about, Buffer.from(content));
  }

  /** What was guessed, what was decided, and how far it is. */
  @Get(':id')
  @Allow(...DESK)
  @SerializeOptions({ schema: Import })
  one(@Param({ schema: ImportPath }) { id }: ImportPath, @TheCaller() caller: Caller): Promise<Import> {
    return this.imports.one(caller, id);
  }

  /** Says how the sheet is to be read. */
  @Put(':id/plan')
  @Allow(...DESK)
  @SerializeOptions({ schema: Import })
  decide(@Param({ schema: ImportPath }) { id }: ImportPath, @Body({ schema: ImportPlan }) plan: ImportPlan, @TheCaller() caller: Caller): Promise<Import> {
    return this.imports.decide(caller, id, plan);
  }

  /** What writing it would do. Writes nothing. */
  @Get(':id/dry-run')
  @Allow(...DESK)
  @SerializeOptions({ schema: DryRun })
  dryRun(@Param({ schema: ImportPath }) { id }: ImportPath, @TheCaller() caller: Caller): Promise<DryRun> {
    return this.imports.dryRun(caller, id);
  }

  /** Writes the sheet, all of it or nothing. It goes on after the answer; the import tells how far it is. */
  @Post(':id/writing')
  @HttpCode(202)
  @Allow(...DESK)
  @SerializeOptions({ schema: Import })
  write(@Param({ schema: ImportPath }) { id }: ImportPath, @Body({ schema: WriteImport }) how: WriteImport, @TheCaller() caller: Caller): Promise<Import> {
    return this.writing.start(caller, id, how);
  }
}
