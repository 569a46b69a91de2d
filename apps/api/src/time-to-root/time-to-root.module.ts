import { Module } from '@nestjs/common';
import { FollowedQueries } from './followed.queries.ts';

@Module({ providers: [FollowedQueries], exports: [FollowedQueries] })
export class TimeToRootModule {}
