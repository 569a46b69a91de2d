import { z } from 'zod';

/** Problem details after RFC 9457; the media type is application/problem+json. */
export const Problem = z.looseObject({
  /** `/problems/<code>`, or about:blank where the status says it all. */
  type: z.string(),
  title: z.string(),
  status: z.int(),
  detail: z.string().optional(),
  instance: z.string().optional(),
  /** Numbers behind the refusal. */
  facts: z.record(z.string(), z.union([z.string(), z.number()])).optional(),
  /** What does not fit, each with an RFC 6901 pointer into the body. */
  errors: z.array(z.object({ pointer: z.string(), detail: z.string() })).optional(),
});
export type Problem = z.infer<typeof Problem>;
