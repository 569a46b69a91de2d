import { Body, Controller, Get, HttpCode, Param, Post, SerializeOptions } from '@nestjs/common';
import { Joined, SetUp, TokenPath } from '@sprigline/contract';
import { Open } from '../http/rule.ts';
import { SetupService } from './setup.service.ts';

@Controller('setup')
export class SetupController {
  constructor(private readonly setup: SetupService) {}

  /** Whether the link still sets this install up: 204, or `link/closed`. */
  @Get(':token')
  @HttpCode(204)
  @Open()
  seen(@Param({ schema: TokenPath }) { token }: TokenPath): Promise<void> {
    return this.setup.seen(token);
  }

  /** Sets an empty install up, by the one-time link that its start prints. */
  @Post()
  @Open()
  @SerializeOptions({ schema: Joined })
  setUp(@Body({ schema: SetUp }) setUp: SetUp): Promise<Joined> {
    return this.setup.setUp(setUp);
  }
}
