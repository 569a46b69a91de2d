import { Module } from '@nestjs/common';
import { ExactPlaceModule } from '../exact-place/exact-place.module.ts';
import { SealController } from './seal.controller.ts';
import { SealQueries } from './seal.queries.ts';
import { SealService } from './seal.service.ts';

@Module({ imports: [ExactPlaceModule], controllers: [SealController], providers: [SealQueries, SealService], exports: [SealQueries] })
export class SealModule {}
