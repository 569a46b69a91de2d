import { Module } from '@nestjs/common';
import { ClimateController } from './climate.controller.ts';
import { ClimateService } from './climate.service.ts';

@Module({ controllers: [ClimateController], providers: [ClimateService] })
export class ClimateModule {}
