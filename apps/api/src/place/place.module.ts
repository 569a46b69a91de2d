import { Module } from '@nestjs/common';
import { EntryModule } from '../entry/entry.module.ts';
import { PlaceController } from './place.controller.ts';
import { PlaceQueries } from './place.queries.ts';
import { PlaceRecordQueries } from './place-record.queries.ts';
import { PlaceService } from './place.service.ts';
import { TrayService } from './tray.service.ts';
import { WalkService } from './walk.service.ts';

@Module({
  imports: [EntryModule],
  controllers: [PlaceController],
  providers: [PlaceQueries, PlaceRecordQueries, PlaceService, TrayService, WalkService],
})
export class PlaceModule {}
