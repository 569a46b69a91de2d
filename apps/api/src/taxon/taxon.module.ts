import { Module } from '@nestjs/common';
import { ExactPlaceModule } from '../exact-place/exact-place.module.ts';
import { TaxonController } from './taxon.controller.ts';
import { TaxonService } from './taxon.service.ts';

@Module({ imports: [ExactPlaceModule], controllers: [TaxonController], providers: [TaxonService] })
export class TaxonModule {}
