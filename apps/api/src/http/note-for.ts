import type { Caller } from './caller.ts';

/** Notes are written among the programme's own people, who may name each other and places in them: a partner is not shown them. */
export const noteFor = ({ partnerId }: Caller, note: string | null): string | null => (partnerId === undefined ? note : null);
