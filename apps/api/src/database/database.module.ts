import { Global, Module } from '@nestjs/common';
import { Database } from './database.ts';
import { PrismaDoor } from './prisma-door.ts';

@Global()
@Module({ providers: [Database, PrismaDoor], exports: [Database, PrismaDoor] })
export class DatabaseModule {}
