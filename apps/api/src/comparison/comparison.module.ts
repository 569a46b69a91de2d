import { Module } from '@nestjs/common';
import { DueModule } from '../due/due.module.ts';
import { HeadQueries } from '../reading/head.queries.ts';
import { ComparisonController } from './comparison.controller.ts';
import { ComparisonQueries } from './comparison.queries.ts';
import { ComparisonService } from './comparison.service.ts';

@Module({
  imports: [DueModule],
  controllers: [ComparisonController],
  providers: [ComparisonService, ComparisonQueries, HeadQueries],
})
export class ComparisonModule {}
