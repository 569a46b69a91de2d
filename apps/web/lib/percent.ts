/** A share as people say it: whole per cent, and one decimal near none and near all, so that few is not none. Never broken over lines. */
export const percent = (share: number): string => `${figure(share)}\u00a0%`;

/** A range of shares, such as 27–60 %. */
export const percentRange = ({ lower, upper }: { readonly lower: number; readonly upper: number }): string => `${figure(lower)}–${percent(upper)}`;

function figure(share: number): string {
  const value = share * 100;
  const isNearEnd = (value > 0 && value < 10) || (value > 99 && value < 100);
  // Never rounded to none or to all.
  return isNearEnd ? Math.min(99.9, Math.max(0.1, value)).toFixed(1) : String(Math.round(value));
}
