import { Module } from '@nestjs/common';
import { WorkdayController } from './workday.controller.ts';
import { WorkdayService } from './workday.service.ts';
import { WorkdaySummaryQueries } from './workday-summary.queries.ts';

@Module({ controllers: [WorkdayController], providers: [WorkdayService, WorkdaySummaryQueries] })
export class WorkdayModule {}
