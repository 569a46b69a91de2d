import { Module } from '@nestjs/common';
import { DueModule } from '../due/due.module.ts';
import { HandoverQueries } from './handover.queries.ts';
import { HandoverService } from './handover.service.ts';
import { LandownerQueries } from './landowner.queries.ts';
import { PlantedQueries } from './planted.queries.ts';
import { ReportController } from './report.controller.ts';
import { ReportHeadQueries } from './report-head.queries.ts';
import { ReportService } from './report.service.ts';

@Module({
  imports: [DueModule],
  controllers: [ReportController],
  providers: [ReportService, HandoverService, ReportHeadQueries, LandownerQueries, PlantedQueries, HandoverQueries],
})
export class ReportModule {}
