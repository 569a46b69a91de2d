import { Global, Module } from '@nestjs/common';
import { Database } from './database.ts';
import { PrismaDoor } from './prisma-door.ts';
import { RecordTrail } from './record-trail.ts';

@Global()
@Module({ providers: [Database, PrismaDoor, RecordTrail], exports: [Database, PrismaDoor, RecordTrail] })
export class DatabaseModule {}
