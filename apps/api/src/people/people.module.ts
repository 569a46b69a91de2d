import { Module } from '@nestjs/common';
import { SignInModule } from '../sign-in/sign-in.module.ts';
import { InvitationController } from './invitation.controller.ts';
import { InvitationQueries } from './invitation.queries.ts';
import { InvitationService } from './invitation.service.ts';
import { JoiningController } from './joining.controller.ts';
import { JoiningService } from './joining.service.ts';
import { PeopleController } from './people.controller.ts';
import { PeopleQueries } from './people.queries.ts';
import { PeopleService } from './people.service.ts';
import { ResetLinkController } from './reset-link.controller.ts';
import { ResetLinkService } from './reset-link.service.ts';

@Module({
  imports: [SignInModule],
  controllers: [PeopleController, InvitationController, JoiningController, ResetLinkController],
  providers: [PeopleService, PeopleQueries, InvitationService, InvitationQueries, JoiningService, ResetLinkService],
})
export class PeopleModule {}
