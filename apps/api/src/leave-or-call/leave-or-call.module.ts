import { Module } from '@nestjs/common';
import { DueModule } from '../due/due.module.ts';
import { ReadingModule } from '../reading/reading.module.ts';
import { TimeToRootModule } from '../time-to-root/time-to-root.module.ts';
import { LeaveOrCallController } from './leave-or-call.controller.ts';
import { LeaveOrCallService } from './leave-or-call.service.ts';
import { WaitingTrayQueries } from './waiting-tray.queries.ts';

@Module({ imports: [ReadingModule, TimeToRootModule, DueModule], controllers: [LeaveOrCallController], providers: [LeaveOrCallService, WaitingTrayQueries] })
export class LeaveOrCallModule {}
