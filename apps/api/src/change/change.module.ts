import { Module } from '@nestjs/common';
import { ChangeController } from './change.controller.ts';
import { ChangeQueries } from './change.queries.ts';
import { ChangeService } from './change.service.ts';

@Module({ controllers: [ChangeController], providers: [ChangeService, ChangeQueries] })
export class ChangeModule {}
