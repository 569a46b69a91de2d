import { Module } from '@nestjs/common';
import { TreatmentController } from './treatment.controller.ts';
import { TreatmentService } from './treatment.service.ts';

@Module({ controllers: [TreatmentController], providers: [TreatmentService] })
export class TreatmentModule {}
