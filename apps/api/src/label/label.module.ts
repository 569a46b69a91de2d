import { Module } from '@nestjs/common';
import { LabelLineQueries } from './label-line.queries.ts';
import { LabelController } from './label.controller.ts';
import { LabelQueries } from './label.queries.ts';
import { LabelService } from './label.service.ts';
import { LabelRollController } from './roll.controller.ts';
import { RollQueries } from './roll.queries.ts';

@Module({ controllers: [LabelController, LabelRollController], providers: [LabelService, LabelQueries, LabelLineQueries, RollQueries] })
export class LabelModule {}
