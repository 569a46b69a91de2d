import { Module } from '@nestjs/common';
import { LabelController } from './label.controller.ts';
import { LabelQueries } from './label.queries.ts';

@Module({ controllers: [LabelController], providers: [LabelQueries] })
export class LabelModule {}
