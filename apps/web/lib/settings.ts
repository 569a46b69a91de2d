import 'server-only';
import { z } from 'zod';

const Settings = z.object({
  /** Where the pages find the API. Left out: on the port that serves the pages too. */
  API_URL: z.url().optional(),
  PORT: z.coerce.number().int().min(1).max(65_535).default(3000),
});

/**
 * Address of the API as this server reaches it, without a trailing slash.
 * Asked at each request and not once, since the launcher learns its port last.
 */
export function apiAddress(): string {
  const { API_URL, PORT } = Settings.parse(process.env);
  return API_URL?.replace(/\/$/, '') ?? `http://127.0.0.1:${PORT}`;
}
