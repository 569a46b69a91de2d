/**
 * A question the mathematics cannot answer, or a change the rules forbid.
 *
 * `code` is stable and public: it ends up as the last part of the problem type
 * that the API sends, and the web app picks its words by it. `facts` holds the
 * numbers behind the refusal, never a stack, a row or a person's name.
 */
export class DomainError<Code extends string = string> extends Error {
  override readonly name = 'DomainError';

  constructor(
    readonly code: Code,
    message: string,
    readonly facts: Readonly<Record<string, string | number>> = {},
  ) {
    super(message);
  }
}
