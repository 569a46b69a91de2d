/** Under this name a device remembers the workday that was chosen on it. It is no secret, and says nothing of a person. */
export const WORKDAY_COOKIE = 'sprigline.workday';

/** A working day, and not into the next one. */
export const WORKDAY_KEPT_S = 14 * 60 * 60;

/** The one that this device remembers, read in the browser. */
export const rememberedWorkday = (): string | undefined => document.cookie.split('; ').find((one) => one.startsWith(`${WORKDAY_COOKIE}=`))?.slice(WORKDAY_COOKIE.length + 1);
