import { Module } from '@nestjs/common';
import { KeyController } from './key.controller.ts';
import { KeyQueries } from './key.queries.ts';
import { KeyService } from './key.service.ts';

@Module({ controllers: [KeyController], providers: [KeyService, KeyQueries] })
export class KeyModule {}
