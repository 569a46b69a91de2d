/** A field of one line in a form of many. */
export const lineField = (at: number, field: string): string => `lines/${at}/${field}`;
