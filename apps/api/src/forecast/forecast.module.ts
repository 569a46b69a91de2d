import { Module } from '@nestjs/common';
import { ReadingModule } from '../reading/reading.module.ts';
import { ForecastController } from './forecast.controller.ts';
import { ForecastService } from './forecast.service.ts';
import { StageBooksQueries } from './stage-books.queries.ts';

@Module({ imports: [ReadingModule], controllers: [ForecastController], providers: [ForecastService, StageBooksQueries] })
export class ForecastModule {}
