/** Somebody said: not now. Of one thing due on one day. */
export interface PutOff {
  /** The day it was due on when it was put off. */
  readonly dueOn: string;
  readonly until: string;
}

/**
 * The put-off that holds for something due, if one does.
 *
 * A put-off is of one due day only. Whatever moves that day, above all the entry that does the work, ends it; so an
 * old put-off can hide nothing new. And it holds until a day, from which on the thing is due again.
 *
 * @param putOffs of this very thing, the newest first: the newest one of that due day is what people agreed last
 */
export const putOffOf = <P extends PutOff>(dueOn: string, putOffs: readonly P[]): P | undefined => putOffs.find((one) => one.dueOn === dueOn);

/** The day on which it shows: its due day, or the day until which it was put off; never earlier than it is due. */
export const showsOn = (dueOn: string, putOff: PutOff | undefined): string => (putOff && putOff.until > dueOn ? putOff.until : dueOn);
