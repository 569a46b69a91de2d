import { Module } from '@nestjs/common';
import { DueModule } from '../due/due.module.ts';
import { SecondOpinionModule } from '../second-opinion/second-opinion.module.ts';
import { FiguresQueries } from './figures.queries.ts';
import { PlanController } from './plan.controller.ts';
import { PlanQueries } from './plan.queries.ts';
import { PlanService } from './plan.service.ts';
import { ShareController } from './share.controller.ts';
import { ShareQueries } from './share.queries.ts';
import { ShareService } from './share.service.ts';

@Module({
  imports: [DueModule, SecondOpinionModule],
  controllers: [PlanController, ShareController],
  providers: [PlanService, PlanQueries, FiguresQueries, ShareService, ShareQueries],
})
export class PlanModule {}
