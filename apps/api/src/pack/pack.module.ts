import { Module } from '@nestjs/common';
import { RoundModule } from '../round/round.module.ts';
import { SealModule } from '../seal/seal.module.ts';
import { PackController } from './pack.controller.ts';
import { PackQueries } from './pack.queries.ts';

@Module({ imports: [RoundModule, SealModule], controllers: [PackController], providers: [PackQueries] })
export class PackModule {}
