import { Module } from '@nestjs/common';
import { SignInModule } from '../sign-in/sign-in.module.ts';
import { ProgrammeController } from './programme.controller.ts';
import { ProgrammeQueries } from './programme.queries.ts';
import { ProgrammeService } from './programme.service.ts';
import { SetupController } from './setup.controller.ts';
import { SetupService } from './setup.service.ts';

@Module({
  imports: [SignInModule],
  controllers: [ProgrammeController, SetupController],
  providers: [ProgrammeService, ProgrammeQueries, SetupService],
})
export class ProgrammeModule {}
