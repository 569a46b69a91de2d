import { Module } from '@nestjs/common';
import { PermissionModule } from '../permission/permission.module.ts';
import { TripController } from './trip.controller.ts';
import { TripQueries } from './trip.queries.ts';
import { TripService } from './trip.service.ts';
import { TripNoteController } from './trip-note.controller.ts';
import { TripNoteService } from './trip-note.service.ts';
import { TripWarningQueries } from './trip-warning.queries.ts';

@Module({
  imports: [PermissionModule],
  controllers: [TripController, TripNoteController],
  providers: [TripQueries, TripWarningQueries, TripService, TripNoteService],
})
export class TripModule {}
