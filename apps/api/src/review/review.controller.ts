import { Body, Controller, Get, HttpCode, Param, Post, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { DecideMany, NewAnswer, NewReview, ProgrammePath, Question, ReviewGroup, ReviewItem, ReviewQuery, ThingPath } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { ReviewService } from './review.service.ts';

@Controller('programmes/:programme')
export class ReviewController {
  constructor(private readonly reviews: ReviewService) {}

  /** What a coordinator should look at, the oldest first, in parts. */
  @Get('review')
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
  @Post('review')
  @HttpCode(204)
  @Allow(...DESK)
  async decide(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewReview }) review: NewReview,
    @TheCaller() caller: Caller,
  ): Promise<void> {
    await this.reviews.decide(caller, review);
  }

  /** How many doubts of each kind are open. */
  @Get('review/groups')
  @Allow(...DESK)
  @SerializeOptions({ schema: ReviewGroup.array() })
  groups(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<ReviewGroup[]> {
    return this.reviews.groups(caller);
  }

  /** Accepts many for one reason: all of them or none. Sending it twice decides once. */
  @Post('review/many')
  @HttpCode(204)
  @Allow(...DESK)
  async decideMany(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: DecideMany }) many: DecideMany,
    @TheCaller() caller: Caller,
  ): Promise<void> {
    await this.reviews.decideMany(caller, many);
  }

  /** What was asked of the caller about entries of theirs, and waits for an answer. */
  @Get('questions')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Question.array() })
  questions(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Question[]> {
    return this.reviews.questionsTo(caller);
  }

  /** Only whoever was asked may answer. Sending it twice answers once. */
  @Post('questions/:id/answer')
  @HttpCode(204)
  @Allow(...MEMBERS)
  async answer(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: NewAnswer }) answer: NewAnswer,
    @TheCaller() caller: Caller,
  ): Promise<void> {
    await this.reviews.answer(caller, id, answer);
  }
}
