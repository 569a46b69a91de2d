import { Body, Controller, Get, Param, Post, SerializeOptions } from '@nestjs/common';
import { InvitationSeen, Joined, NewAccount, TokenPath } from '@sprigline/contract';
import { type SignedIn, TheAccount } from '../http/caller.ts';
import { Open, SignedInOnly } from '../http/rule.ts';
import { JoiningService } from './joining.service.ts';

@Controller('invitations/:token')
export class JoiningController {
  constructor(private readonly joining: JoiningService) {}

  /** Which programme an invitation is for, and as what; nothing else. */
  @Get()
  @Open()
  @SerializeOptions({ schema: InvitationSeen })
  seen(@Param({ schema: TokenPath }) { token }: TokenPath): Promise<InvitationSeen> {
    return this.joining.seen(token);
  }

  /** Accepts with a new account. Sign in afterwards. */
  @Post('account')
  @Open()
  @SerializeOptions({ schema: Joined })
  withNewAccount(@Param({ schema: TokenPath }) { token }: TokenPath, @Body({ schema: NewAccount }) account: NewAccount): Promise<Joined> {
    return this.joining.withNewAccount(token, account);
  }

  /** Accepts as who is signed in. */
  @Post('acceptance')
  @SignedInOnly()
  @SerializeOptions({ schema: Joined })
  withAccount(@Param({ schema: TokenPath }) { token }: TokenPath, @TheAccount() account: SignedIn): Promise<Joined> {
    return this.joining.withAccount(token, account);
  }
}
