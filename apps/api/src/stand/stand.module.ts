import { Module } from '@nestjs/common';
import { ExactPlaceModule } from '../exact-place/exact-place.module.ts';
import { StandController } from './stand.controller.ts';
import { StandService } from './stand.service.ts';

@Module({ imports: [ExactPlaceModule], controllers: [StandController], providers: [StandService] })
export class StandModule {}
