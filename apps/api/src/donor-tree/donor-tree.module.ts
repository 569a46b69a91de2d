import { Module } from '@nestjs/common';
import { EntryModule } from '../entry/entry.module.ts';
import { ExactPlaceModule } from '../exact-place/exact-place.module.ts';
import { DonorTreeController } from './donor-tree.controller.ts';
import { DonorTreeQueries } from './donor-tree.queries.ts';
import { DonorTreeService } from './donor-tree.service.ts';

@Module({
  imports: [EntryModule, ExactPlaceModule],
  controllers: [DonorTreeController],
  providers: [DonorTreeQueries, DonorTreeService],
})
export class DonorTreeModule {}
