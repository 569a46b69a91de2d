import { Module } from '@nestjs/common';
import { APP_FILTER, APP_GUARD, APP_PIPE } from '@nestjs/core';
import { AccessGuard } from './access.guard.ts';
import { CallerLookup } from './caller-lookup.ts';
import { KeyLookup } from './key-lookup.ts';
import { ProblemFilter } from './problem.filter.ts';
import { RateLimit } from './rate-limit.ts';
import { contractPipe } from './unfit-request.ts';

/** What holds for every route: its rule, its contract, and how it says no. */
@Module({
  providers: [
    CallerLookup,
    KeyLookup,
    RateLimit,
    { provide: APP_GUARD, useClass: AccessGuard },
    { provide: APP_PIPE, useFactory: contractPipe },
    { provide: APP_FILTER, useClass: ProblemFilter },
  ],
})
export class HttpModule {}
