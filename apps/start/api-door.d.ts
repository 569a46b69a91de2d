// What the launcher asks of the API. The API's own declarations say the same;
// this stands here so that the launcher can be checked before the API is built.
declare module '@sprigline/api' {
  import type { IncomingMessage, ServerResponse } from 'node:http';

  interface Install {
    databaseUrls: { app: string; auth: string; keeper: string };
    /** The address that people type, without a slash at the end. */
    baseUrl: string;
    /** Signs sessions; 32 characters or more. */
    secret: string;
  }

  export function startApi(
    options: Install & {
      photoFolder: string;
      port: number;
      host: string;
      /** Addresses of proxies whose X-Forwarded-For is believed. */
      trustedProxies: readonly string[];
      requestsPerMinute: number;
      /** Answers everything outside /api. */
      web?: (request: IncomingMessage, response: ServerResponse) => Promise<void>;
    },
  ): Promise<{ url: string; close(): Promise<void> }>;

  /** The application, ready to be asked with `inject`, not listening. */
  export function createApi(options: Install & { photoFolder: string; port: number; log?: 'silent' | 'error' | 'info' | 'debug' }): Promise<{
    inject(asked: { method: 'GET' | 'POST' | 'PUT'; url: string; headers: Record<string, string>; payload?: object | Buffer }): Promise<{
      statusCode: number;
      headers: Record<string, string | string[] | number | undefined>;
      payload: string;
      json(): any;
    }>;
    close(): Promise<void>;
  }>;

  /** One-time link of an empty install; nothing when a programme is there. */
  export function makeSetupLink(install: Install): Promise<string | undefined>;

  /** Every damage, in a sentence. */
  export function verify(options: { keeper: string; photoFolder: string }): Promise<readonly { sentence: string }[]>;
}
