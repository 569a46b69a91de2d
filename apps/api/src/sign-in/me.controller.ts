import { Controller, Get, SerializeOptions } from '@nestjs/common';
import { Me } from '@sprigline/contract';
import { type SignedIn, TheAccount } from '../http/caller.ts';
import { SignedInOnly } from '../http/rule.ts';
import { MeService } from './me.service.ts';

@Controller('me')
export class MeController {
  constructor(private readonly mine: MeService) {}

  /** Who is signed in, and where they work. */
  @Get()
  @SignedInOnly()
  @SerializeOptions({ schema: Me })
  me(@TheAccount() account: SignedIn): Promise<Me> {
    return this.mine.me(account);
  }
}
