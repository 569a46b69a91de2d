import { Module } from '@nestjs/common';
import { PartnerController } from './partner.controller.ts';
import { PartnerService } from './partner.service.ts';

@Module({ controllers: [PartnerController], providers: [PartnerService] })
export class PartnerModule {}
