import type { Problem } from '@sprigline/contract';

/** The API said no, and why. */
export class Refused extends Error {
  override readonly name = 'Refused';

  constructor(readonly problem: Problem) {
    super(problem.detail ?? problem.title);
  }

  /** The stable end of the problem type, such as `record/name-taken`; empty where the status says it all. */
  get code(): string {
    return codeOf(this.problem);
  }
}

export function codeOf(problem: Problem): string {
  return problem.type.startsWith('/problems/') ? problem.type.slice('/problems/'.length) : '';
}

/** One of several things that were sent together was refused. */
export class RefusedPart extends Refused {
  /** @param at its place among those sent */
  constructor(problem: Problem, readonly at: number) {
    super(problem);
  }
}
