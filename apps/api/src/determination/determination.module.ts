import { Module } from '@nestjs/common';
import { DeterminationController } from './determination.controller.ts';
import { DeterminationService } from './determination.service.ts';

@Module({ controllers: [DeterminationController], providers: [DeterminationService] })
export class DeterminationModule {}
