import { Module } from '@nestjs/common';
import { BatchDetailQueries } from './batch-detail.queries.ts';
import { BatchListQueries } from './batch-list.queries.ts';
import { BatchController } from './batch.controller.ts';
import { BatchService } from './batch.service.ts';

@Module({ controllers: [BatchController], providers: [BatchService, BatchListQueries, BatchDetailQueries] })
export class BatchModule {}
