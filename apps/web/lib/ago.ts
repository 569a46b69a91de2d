export interface Ago {
  readonly unit: 'minutes' | 'hours' | 'days';
  readonly n: number;
}

/** How long ago something was, in the coarsest whole unit: what lies in the future is just now. */
export function ago(then: number, now: number): Ago {
  const minutes = Math.max(0, Math.floor((now - then) / 60_000));
  if (minutes < 60) return { unit: 'minutes', n: minutes };
  const hours = Math.floor(minutes / 60);
  return hours < 24 ? { unit: 'hours', n: hours } : { unit: 'days', n: Math.floor(hours / 24) };
}
