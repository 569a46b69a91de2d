import { Module } from '@nestjs/common';
import { TraceController } from './trace.controller.ts';
import { TraceQueries } from './trace.queries.ts';
import { TraceService } from './trace.service.ts';

@Module({ controllers: [TraceController], providers: [TraceService, TraceQueries] })
export class TraceModule {}
