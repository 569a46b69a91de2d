import { Module } from '@nestjs/common';
import { LostLabelController } from './lost-label.controller.ts';
import { LostLabelQueries } from './lost-label.queries.ts';

@Module({ controllers: [LostLabelController], providers: [LostLabelQueries] })
export class LostLabelModule {}
