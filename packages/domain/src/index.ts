// Refusals
export { DomainError } from './errors.ts';

// Ledger
export * from './ledger/books.ts';
export * from './ledger/entry.ts';
