import { Module } from '@nestjs/common';
import { EntryModule } from '../entry/entry.module.ts';
import { ExactPlaceModule } from '../exact-place/exact-place.module.ts';
import { StandController } from './stand.controller.ts';
import { StandService } from './stand.service.ts';

@Module({ imports: [EntryModule, ExactPlaceModule], controllers: [StandController], providers: [StandService] })
export class StandModule {}
