import { Module } from '@nestjs/common';
import { IncidentController } from './incident.controller.ts';
import { IncidentService } from './incident.service.ts';

@Module({ controllers: [IncidentController], providers: [IncidentService] })
export class IncidentModule {}
