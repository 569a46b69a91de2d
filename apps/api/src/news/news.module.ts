import { Module } from '@nestjs/common';
import { NewsController } from './news.controller.ts';
import { NewsQueries } from './news.queries.ts';
import { NewsService } from './news.service.ts';

@Module({ controllers: [NewsController], providers: [NewsService, NewsQueries] })
export class NewsModule {}
