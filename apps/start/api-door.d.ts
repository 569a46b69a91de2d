// What the launcher asks of the API. The API's own declarations say the same;
// this stands here so that the launcher can be checked before the API is built.
declare module '@sprigline/api' {
  import type { IncomingMessage, Server, ServerResponse } from 'node:http';

  interface Install {
    databaseUrls: { app: string; auth: string; keeper: string };
    /** The address that people type, without a slash at the end. */
    baseUrl: string;
    /** Signs sessions; 32 characters or more. */
    secret: string;
  }

  export function startApi(
    options: Install & {
      port: number;
      host: string;
      /** Addresses of proxies whose X-Forwarded-For is believed. */
      trustedProxies: readonly string[];
      /** Answers everything outside /api. */
      web?: (request: IncomingMessage, response: ServerResponse) => Promise<void>;
    },
  ): Promise<{ url: string; server?: Server; close(): Promise<void> }>;

  /** Lines for the terminal: how to sign in to the demo, or the one-time link of an empty install. */
  export function welcome(install: Install): Promise<readonly string[]>;

  export function loadDemo(install: Install): Promise<void>;
  export function resetDemo(install: Install): Promise<void>;

  export function verifyDatabase(options: {
    keeper: string;
  }): Promise<{ checked: readonly string[]; damages: readonly string[] }>;
}
