import { Module } from '@nestjs/common';
import { HandoverQueries } from './handover.queries.ts';
import { LandownerQueries } from './landowner.queries.ts';
import { PlantedQueries } from './planted.queries.ts';
import { ReportController } from './report.controller.ts';
import { ReportHeadQueries } from './report-head.queries.ts';
import { ReportService } from './report.service.ts';

@Module({ controllers: [ReportController], providers: [ReportService, ReportHeadQueries, LandownerQueries, PlantedQueries, HandoverQueries] })
export class ReportModule {}
