import { Body, Controller, Post, SerializeOptions } from '@nestjs/common';
import { Joined, SetUp } from '@sprigline/contract';
import { Open } from '../http/rule.ts';
import { SetupService } from './setup.service.ts';

@Controller('setup')
export class SetupController {
  constructor(private readonly setup: SetupService) {}

  /** Sets an empty install up, by the one-time link that its start prints. */
  @Post()
  @Open()
  @SerializeOptions({ schema: Joined })
  setUp(@Body({ schema: SetUp }) setUp: SetUp): Promise<Joined> {
    return this.setup.setUp(setUp);
  }
}
