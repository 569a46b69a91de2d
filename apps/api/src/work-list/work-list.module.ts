import { Module } from '@nestjs/common';
import { DueModule } from '../due/due.module.ts';
import { EntryModule } from '../entry/entry.module.ts';
import { CandidateQueries } from './candidate.queries.ts';
import { TrayCardController } from './tray-card.controller.ts';
import { TrayCardQueries } from './tray-card.queries.ts';
import { TypingQueries } from './typing.queries.ts';
import { TypingService } from './typing.service.ts';
import { WorkListController } from './work-list.controller.ts';
import { WorkListQueries } from './work-list.queries.ts';
import { WorkListService } from './work-list.service.ts';

@Module({
  imports: [DueModule, EntryModule],
  controllers: [WorkListController, TrayCardController],
  providers: [CandidateQueries, TrayCardQueries, TypingQueries, TypingService, WorkListQueries, WorkListService],
})
export class WorkListModule {}
