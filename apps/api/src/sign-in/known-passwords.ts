import { dictionary } from '@zxcvbn-ts/language-common';
import { DomainError } from '@sprigline/domain';

/** The passwords that leaked most often, some 49,000, in small letters: what anybody tries first. Kept here, so that nothing is asked elsewhere. */
const KNOWN: ReadonlySet<string> = new Set(dictionary['passwords-common']);

/** Figures and marks around a known one make it no secret. */
const AROUND = /^[^\p{L}]+|[^\p{L}]+$/gu;

/**
 * Whether a password is one of those that leaked, alone, twice in a row, or with figures and marks around it
 * (OWASP ASVS 5.0, 6.2.4 and 6.2.12).
 */
export function isKnown(password: string): boolean {
  const said = password.normalize('NFC').toLowerCase();
  const half = said.slice(0, said.length / 2);
  const forms = [said, said.replace(AROUND, ''), ...(half + half === said ? [half] : [])];
  return forms.some((form) => KNOWN.has(form));
}

/** @throws DomainError `sign-in/unfit-password` for one that leaked */
export function refuseKnown(password: string): void {
  if (isKnown(password)) throw new DomainError('sign-in/unfit-password', 'this password is on the list of those that leaked most often: choose another, such as four words that have nothing to do with each other');
}
