import { Body, Controller, Get, HttpCode, Param, Post, SerializeOptions } from '@nestjs/common';
import { MadeLink, MakeResetLink, NewPassword, ResetLinkSeen, ThingPath, TokenPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, DESK, Open } from '../http/rule.ts';
import { ResetLinkService } from './reset-link.service.ts';

@Controller()
export class ResetLinkController {
  constructor(private readonly resetLinks: ResetLinkService) {}

  /** Makes a link, good once and for a day, by which that person chooses a new password. */
  @Post('programmes/:programme/people/:id/reset-links')
  @Allow(...DESK)
  @SerializeOptions({ schema: MadeLink })
  make(
    @Param({ schema: ThingPath }) { id: personId }: ThingPath,
    @Body({ schema: MakeResetLink }) { id }: MakeResetLink,
    @TheCaller() caller: Caller,
  ): Promise<MadeLink> {
    return this.resetLinks.make(caller, personId, id);
  }

  /** For whom the link is. */
  @Get('reset-links/:token')
  @Open()
  @SerializeOptions({ schema: ResetLinkSeen })
  seen(@Param({ schema: TokenPath }) { token }: TokenPath): Promise<ResetLinkSeen> {
    return this.resetLinks.seen(token);
  }

  /** Sets the new password and ends every session of the account. Sign in afterwards. */
  @Post('reset-links/:token')
  @HttpCode(204)
  @Open()
  use(@Param({ schema: TokenPath }) { token }: TokenPath, @Body({ schema: NewPassword }) { password }: NewPassword): Promise<void> {
    return this.resetLinks.use(token, password);
  }
}
