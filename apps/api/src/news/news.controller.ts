import { Body, Controller, Get, HttpCode, Param, Post, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { News, NewsEntry, NewsQuery, ProgrammePath, SeenNews } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, DESK } from '../http/rule.ts';
import { NewsService } from './news.service.ts';

@Controller('programmes/:programme/news')
export class NewsController {
  constructor(private readonly news: NewsService) {}

  /** What arrived since the caller last said that they have seen it: how much, day by day. */
  @Get()
  @Allow(...DESK)
  @SerializeOptions({ schema: News })
  since(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<News> {
    return this.news.since(caller);
  }

  /** The entries that arrived on one day, the newest first, in parts. */
  @Get('entries')
  @Allow(...DESK)
  @SerializeOptions({ schema: NewsEntry.array() })
  async entries(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: NewsQuery }) query: NewsQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<NewsEntry[]> {
    return answerPart(await this.news.entries(caller, query), request, reply);
  }

  /** The caller has looked at all that arrived until then. Never moves back. */
  @Post('seen')
  @HttpCode(204)
  @Allow(...DESK)
  async seen(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Body({ schema: SeenNews }) { until }: SeenNews, @TheCaller() caller: Caller): Promise<void> {
    await this.news.seen(caller, until);
  }
}
