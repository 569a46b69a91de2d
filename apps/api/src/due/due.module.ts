import { Module } from '@nestjs/common';
import { DueController } from './due.controller.ts';
import { DueDaysQueries } from './due-days.queries.ts';
import { DueFoundQueries } from './due-found.queries.ts';
import { DuePlacesQueries } from './due-places.queries.ts';
import { DueQueries } from './due.queries.ts';
import { DueService } from './due.service.ts';
import { PutOffQueries } from './put-off.queries.ts';

@Module({
  controllers: [DueController],
  providers: [DueService, DueFoundQueries, DueQueries, DuePlacesQueries, DueDaysQueries, PutOffQueries],
  exports: [DueService, DueFoundQueries, DueDaysQueries],
})
export class DueModule {}
