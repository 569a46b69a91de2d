import { Module } from '@nestjs/common';
import { QuestionQueries } from './question.queries.ts';
import { ReviewController } from './review.controller.ts';
import { ReviewQueries } from './review.queries.ts';
import { ReviewService } from './review.service.ts';

@Module({ controllers: [ReviewController], providers: [ReviewService, ReviewQueries, QuestionQueries] })
export class ReviewModule {}
