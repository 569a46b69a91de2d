import { Inject, Injectable, Module, type OnApplicationShutdown } from '@nestjs/common';
import pg from 'pg';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { AccountQueries } from './account.queries.ts';
import { MeController } from './me.controller.ts';
import { MeService } from './me.service.ts';
import { type SignInLibrary, signInLibrary } from './sign-in-library.ts';

/** The sign-in library and its own connections: nothing else may touch its tables. */
@Injectable()
export class SignIn implements OnApplicationShutdown {
  readonly pool: pg.Pool;
  readonly library: SignInLibrary;

  constructor(@Inject(SETTINGS) settings: Settings) {
    this.pool = new pg.Pool({ connectionString: settings.databaseUrls.auth, max: 4, options: '-c search_path=auth' });
    this.pool.on('error', () => undefined);
    this.library = signInLibrary(settings, this.pool);
  }

  async onApplicationShutdown(): Promise<void> {
    await this.pool.end();
  }
}

@Module({ controllers: [MeController], providers: [SignIn, AccountQueries, MeService], exports: [SignIn, AccountQueries] })
export class SignInModule {}
