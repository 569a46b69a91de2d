import { Module } from '@nestjs/common';
import { ReadingModule } from '../reading/reading.module.ts';
import { FollowedQueries } from './followed.queries.ts';
import { TimeToRootController } from './time-to-root.controller.ts';
import { TimeToRootService } from './time-to-root.service.ts';

@Module({ imports: [ReadingModule], controllers: [TimeToRootController], providers: [FollowedQueries, TimeToRootService], exports: [FollowedQueries] })
export class TimeToRootModule {}
