import { Module } from '@nestjs/common';
import { EntryModule } from '../entry/entry.module.ts';
import { ImportProgress } from './import-progress.ts';
import { ImportWriting } from './import-writing.ts';
import { ImportController } from './import.controller.ts';
import { ImportQueries } from './import.queries.ts';
import { ImportService } from './import.service.ts';
import { KnownQueries } from './known.queries.ts';
import { SheetRecords } from './sheet-records.ts';
import { SheetWriting } from './sheet-writing.ts';

@Module({
  imports: [EntryModule],
  controllers: [ImportController],
  providers: [ImportService, ImportWriting, SheetWriting, ImportQueries, KnownQueries, SheetRecords, ImportProgress],
})
export class ImportModule {}
