import { z } from 'zod';

/** What the API needs to know at start. Parsed once; nothing else reads the environment. */
export const Settings = z.object({
  /** Port to listen on; 0 takes a free one. */
  port: z.int().min(0).max(65535),
  host: z.string().default('127.0.0.1'),
  /** Address that people type, without a trailing slash. Links and cookies are made for it. */
  baseUrl: z.url(),
  databaseUrls: z.object({
    /** Login under row-level security. */
    app: z.string(),
    /** Login of the sign-in tables only. */
    auth: z.string(),
    /** Login that bypasses row-level security: backs up and verifies. */
    keeper: z.string(),
  }),
  /** Where the pictures of photos lie; made when the first one comes. */
  photoFolder: z.string().min(1),
  /** Signs cookies; at least 32 characters. */
  secret: z.string().min(32, { error: 'must be at least 32 characters' }),
  /** Addresses of proxies whose `X-Forwarded-For` is believed; none unless told. */
  trustedProxies: z.array(z.string()).default([]),
  /** Taken of each key, each person, and each address of neither; 0 takes any number. */
  requestsPerMinute: z.int().min(0).default(3_000),
  /** What time it is, for tests that live through a year; the real time unless told. */
  presentTime: z.custom<() => Date>((told) => typeof told === 'function').optional(),
  log: z.enum(['silent', 'error', 'info', 'debug']).default('info'),
});
export type Settings = z.infer<typeof Settings>;
export type SettingsInput = z.input<typeof Settings>;
