import { Module } from '@nestjs/common';
import { EntryController } from './entry.controller.ts';
import { EntryService } from './entry.service.ts';
import { LedgerWriter } from './ledger-writer.ts';

export { type Author, authorOf } from './author.ts';
export { contentId } from './content-id.ts';
export { LedgerWriter } from './ledger-writer.ts';
export type { WrittenItem } from './written-item.ts';

@Module({ controllers: [EntryController], providers: [EntryService, LedgerWriter], exports: [LedgerWriter] })
export class EntryModule {}
