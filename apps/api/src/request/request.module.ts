import { Module } from '@nestjs/common';
import { EntryModule } from '../entry/entry.module.ts';
import { DespatchController } from './despatch.controller.ts';
import { DespatchQueries } from './despatch.queries.ts';
import { DespatchService } from './despatch.service.ts';
import { PlantsQueries } from './plants.queries.ts';
import { RequestController } from './request.controller.ts';
import { RequestQueries } from './request.queries.ts';
import { RequestService } from './request.service.ts';
import { ReservationService } from './reservation.service.ts';

@Module({
  imports: [EntryModule],
  controllers: [RequestController, DespatchController],
  providers: [RequestQueries, PlantsQueries, DespatchQueries, RequestService, ReservationService, DespatchService],
})
export class RequestModule {}
