import 'server-only';
import { z } from 'zod';

const Settings = z.object({
  /** Where the pages find the API. Left out: on the port that serves the pages too. */
  API_URL: z.url().optional(),
  /** The address that people type. Left out: the one that a page was asked for by. */
  BASE_URL: z.string().trim().optional(),
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

/** The address that people type, without a trailing slash, where somebody has set one. */
export function setAddress(): string | undefined {
  const { BASE_URL } = Settings.parse(process.env);
  return BASE_URL ? BASE_URL.replace(/\/$/, '') : undefined;
}
