import { Module } from '@nestjs/common';
import { HoldController } from './hold.controller.ts';
import { HoldService } from './hold.service.ts';

@Module({ controllers: [HoldController], providers: [HoldService] })
export class HoldModule {}
