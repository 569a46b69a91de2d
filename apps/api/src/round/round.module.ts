import { Module } from '@nestjs/common';
import { RoundController } from './round.controller.ts';
import { RoundQueries } from './round.queries.ts';

@Module({ controllers: [RoundController], providers: [RoundQueries], exports: [RoundQueries] })
export class RoundModule {}
