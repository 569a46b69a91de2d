import { StandardSchemaValidationPipe } from '@nestjs/common';
import type { StandardSchemaV1 } from '@standard-schema/spec';

/** More than this many faults help nobody, and a hostile body must not be answered with megabytes. */
const FAULTS_SHOWN = 50;

export interface Fault {
  /** RFC 6901 pointer into the body, as a fragment. */
  readonly pointer: string;
  readonly detail: string;
}

/** The request does not have the shape that its contract names. */
export class UnfitRequest extends Error {
  readonly errors: readonly Fault[];

  constructor(errors: readonly Fault[]) {
    super('the request does not fit its contract');
    this.errors = errors;
  }
}

export const faultsOf = (issues: readonly StandardSchemaV1.Issue[]): Fault[] =>
  issues.slice(0, FAULTS_SHOWN).map(({ path = [], message }) => ({
    pointer: `#${path.map((step) => `/${escaped(String(typeof step === 'object' ? step.key : step))}`).join('')}`,
    detail: message.slice(0, 300),
  }));

const escaped = (step: string): string => step.replaceAll('~', '~0').replaceAll('/', '~1');

export const contractPipe = (): StandardSchemaValidationPipe =>
  new StandardSchemaValidationPipe({ exceptionFactory: (issues) => new UnfitRequest(faultsOf(issues)) });
