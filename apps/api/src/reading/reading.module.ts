import { Module } from '@nestjs/common';
import { DashboardController } from './dashboard.controller.ts';
import { DashboardService } from './dashboard.service.ts';
import { DueModule } from '../due/due.module.ts';
import { DiversityQueries } from './diversity.queries.ts';
import { FunnelQueries } from './funnel.queries.ts';
import { HeadQueries } from './head.queries.ts';
import { HoldingQueries } from './holding.queries.ts';
import { LineQueries } from './line.queries.ts';
import { ReadingController } from './reading.controller.ts';
import { ReadingService } from './reading.service.ts';
import { SiteReadingQueries } from './site-reading.queries.ts';
import { TimeAxisQueries } from './time-axis.queries.ts';

@Module({
  imports: [DueModule],
  controllers: [ReadingController, DashboardController],
  providers: [ReadingService, DashboardService, HeadQueries, FunnelQueries, DiversityQueries, HoldingQueries, LineQueries, SiteReadingQueries, TimeAxisQueries],
  exports: [HeadQueries],
})
export class ReadingModule {}
