import { Module } from '@nestjs/common';
import { DueModule } from '../due/due.module.ts';
import { DiversityQueries } from './diversity.queries.ts';
import { FunnelQueries } from './funnel.queries.ts';
import { HeadQueries } from './head.queries.ts';
import { HoldingQueries } from './holding.queries.ts';
import { ReadingController } from './reading.controller.ts';
import { ReadingService } from './reading.service.ts';

@Module({
  imports: [DueModule],
  controllers: [ReadingController],
  providers: [ReadingService, HeadQueries, FunnelQueries, DiversityQueries, HoldingQueries],
})
export class ReadingModule {}
