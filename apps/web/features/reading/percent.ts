/** A share as people say it: whole per cent, and one decimal below ten, so that few is not none. */
export function percent(share: number): string {
  const value = share * 100;
  return `${value > 0 && value < 10 ? value.toFixed(1) : value > 99 && value < 100 ? value.toFixed(1) : Math.round(value)} %`;
}
