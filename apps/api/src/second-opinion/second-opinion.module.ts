import { Module } from '@nestjs/common';
import { DueModule } from '../due/due.module.ts';
import { PastQueries } from './past.queries.ts';
import { SecondOpinionController } from './second-opinion.controller.ts';
import { SecondOpinionService } from './second-opinion.service.ts';
import { StuckQueries } from './stuck.queries.ts';

@Module({ imports: [DueModule], controllers: [SecondOpinionController], providers: [SecondOpinionService, StuckQueries, PastQueries], exports: [PastQueries] })
export class SecondOpinionModule {}
