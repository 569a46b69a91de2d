import pg from 'pg';

interface AdapterError {
  readonly meta?: { readonly driverAdapterError?: { readonly cause?: AdapterCause } };
}
interface AdapterCause {
  readonly constraint?: { readonly index?: string };
  readonly originalMessage?: string;
}

/**
 * The name of the constraint that the database says was violated, if any.
 *
 * `pg` gives it as a field; Prisma's adapter gives it as a field too, except for
 * CHECK, where it stands only inside the message between double quotes (7.10).
 * Never pass the rest of `meta` on: for CHECK it quotes the whole row.
 */
export function constraintName(error: unknown): string | undefined {
  if (error instanceof pg.DatabaseError) return error.constraint;
  const cause = (error as AdapterError | undefined)?.meta?.driverAdapterError?.cause;
  return cause?.constraint?.index ?? /constraint "([^"]+)"/.exec(cause?.originalMessage ?? '')?.[1];
}
