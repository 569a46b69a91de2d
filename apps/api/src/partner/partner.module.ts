import { Module } from '@nestjs/common';
import { OursController } from './ours.controller.ts';
import { OursQueries } from './ours.queries.ts';
import { PartnerController } from './partner.controller.ts';
import { PartnerService } from './partner.service.ts';

@Module({ controllers: [PartnerController, OursController], providers: [PartnerService, OursQueries] })
export class PartnerModule {}
