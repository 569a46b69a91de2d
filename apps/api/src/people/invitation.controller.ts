import { Body, Controller, Delete, Get, HttpCode, Param, Post, SerializeOptions } from '@nestjs/common';
import { Invitation, MadeLink, MakeInvitation, ProgrammePath, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, DESK } from '../http/rule.ts';
import { InvitationService } from './invitation.service.ts';

@Controller('programmes/:programme/invitations')
export class InvitationController {
  constructor(private readonly invitations: InvitationService) {}

  @Get()
  @Allow(...DESK)
  @SerializeOptions({ schema: Invitation.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Invitation[]> {
    return this.invitations.list(caller);
  }

  /** Makes an invitation. The answer holds its link; sending it again answers the same one. */
  @Post()
  @Allow(...DESK)
  @SerializeOptions({ schema: MadeLink })
  make(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: MakeInvitation }) invitation: MakeInvitation,
    @TheCaller() caller: Caller,
  ): Promise<MadeLink> {
    return this.invitations.make(caller, invitation);
  }

  /** Its link opens nothing from now on. */
  @Delete(':id')
  @HttpCode(204)
  @Allow(...DESK)
  withdraw(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<void> {
    return this.invitations.withdraw(caller, id);
  }
}
