import { type DynamicModule, Module } from '@nestjs/common';
import { SETTINGS } from './config/settings.token.ts';
import type { Settings } from './config/settings.ts';
import { DatabaseModule } from './database/database.module.ts';
import { EntryModule } from './entry/entry.module.ts';
import { HttpModule } from './http/http.module.ts';
import { SignInModule } from './sign-in/sign-in.module.ts';

/** The list of features: the table of contents. */
@Module({})
export class AppModule {
  static with(settings: Settings): DynamicModule {
    return {
      module: AppModule,
      global: true,
      imports: [DatabaseModule, HttpModule, SignInModule, EntryModule],
      providers: [{ provide: SETTINGS, useValue: settings }],
      exports: [SETTINGS],
    };
  }
}
