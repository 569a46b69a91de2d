import { Module } from '@nestjs/common';
import { EntryController } from './entry.controller.ts';
import { EntryService } from './entry.service.ts';
import { LedgerWriter } from './ledger-writer.ts';
import { WhoMaySeeQueries } from './who-may-see.queries.ts';

export { type Author, authorOf } from './author.ts';
export { contentId } from './content-id.ts';
export { LedgerWriter } from './ledger-writer.ts';
export type { WrittenItem } from './written-item.ts';

@Module({ controllers: [EntryController], providers: [EntryService, LedgerWriter, WhoMaySeeQueries], exports: [LedgerWriter, WhoMaySeeQueries] })
export class EntryModule {}
