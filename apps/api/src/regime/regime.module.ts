import { Module } from '@nestjs/common';
import { RegimeController } from './regime.controller.ts';
import { RegimeService } from './regime.service.ts';

@Module({ controllers: [RegimeController], providers: [RegimeService] })
export class RegimeModule {}
