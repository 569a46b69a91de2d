import { Module } from '@nestjs/common';
import { WorkdayController } from './workday.controller.ts';
import { WorkdayService } from './workday.service.ts';

@Module({ controllers: [WorkdayController], providers: [WorkdayService] })
export class WorkdayModule {}
