import { Module } from '@nestjs/common';
import { PlaceController } from './place.controller.ts';
import { PlaceQueries } from './place.queries.ts';
import { PlaceRecordQueries } from './place-record.queries.ts';
import { PlaceService } from './place.service.ts';
import { TrayService } from './tray.service.ts';

@Module({ controllers: [PlaceController], providers: [PlaceQueries, PlaceRecordQueries, PlaceService, TrayService] })
export class PlaceModule {}
