import { Body, Controller, Delete, Get, HttpCode, Param, Post, SerializeOptions } from '@nestjs/common';
import { MadeLink, MakePlanShare, PlanShare, PlanSharePath, SharedPlan, ThingPath, TokenPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, DESK, Open } from '../http/rule.ts';
import { ShareService } from './share.service.ts';

@Controller()
export class ShareController {
  constructor(private readonly shares: ShareService) {}

  /** Every link ever made to this plan, the newest first; never the links themselves. */
  @Get('programmes/:programme/plans/:id/shares')
  @Allow(...DESK)
  @SerializeOptions({ schema: PlanShare.array() })
  list(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<PlanShare[]> {
    return this.shares.list(caller, id);
  }

  /** Makes a link that shows the plan to whoever has it, read only, for so many days. Sending it twice makes it once. */
  @Post('programmes/:programme/plans/:id/shares')
  @Allow(...DESK)
  @SerializeOptions({ schema: MadeLink })
  make(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: MakePlanShare }) share: MakePlanShare, @TheCaller() caller: Caller): Promise<MadeLink> {
    return this.shares.make(caller, id, share);
  }

  /** Closes the link at once. */
  @Delete('programmes/:programme/plans/:id/shares/:shareId')
  @Allow(...DESK)
  @HttpCode(204)
  revoke(@Param({ schema: PlanSharePath }) { id, shareId }: PlanSharePath, @TheCaller() caller: Caller): Promise<void> {
    return this.shares.revoke(caller, id, shareId);
  }

  /** The plan and the second opinion on it, without saying where donor trees stand, which they are, or who wrote it. */
  @Get('shared-plans/:token')
  @Open()
  @SerializeOptions({ schema: SharedPlan })
  seen(@Param({ schema: TokenPath }) { token }: TokenPath): Promise<SharedPlan> {
    return this.shares.seen(token);
  }
}
