import { Module } from '@nestjs/common';
import { CellQueries } from './cell.queries.ts';
import { ExactPlaceController } from './exact-place.controller.ts';
import { ExactPlaceQueries } from './exact-place.queries.ts';
import { ExactPlaceService } from './exact-place.service.ts';

@Module({
  controllers: [ExactPlaceController],
  providers: [CellQueries, ExactPlaceQueries, ExactPlaceService],
  exports: [CellQueries, ExactPlaceQueries],
})
export class ExactPlaceModule {}
