import { Body, Controller, Get, HttpCode, Param, Post, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { NewReview, ProgrammePath, ReviewItem, ReviewQuery } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, DESK } from '../http/rule.ts';
import { ReviewService } from './review.service.ts';

@Controller('programmes/:programme/review')
export class ReviewController {
  constructor(private readonly reviews: ReviewService) {}

  /** What a coordinator should look at, the oldest first, in parts. */
  @Get()
  @Allow(...DESK)
  @SerializeOptions({ schema: ReviewItem.array() })
  async open(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: ReviewQuery }) query: ReviewQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<ReviewItem[]> {
    return answerPart(await this.reviews.open(caller, query), request, reply);
  }

  /** Decides about one flag. Sending it twice decides once. */
  @Post()
  @HttpCode(204)
  @Allow(...DESK)
  async decide(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewReview }) review: NewReview,
    @TheCaller() caller: Caller,
  ): Promise<void> {
    await this.reviews.decide(caller, review);
  }
}
