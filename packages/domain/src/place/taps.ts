/** What is looked at before the batches of a place: lights on, air or mist on, heat on, lid wet, mould seen. */
export const TAPS = ['lights', 'air', 'heat', 'lid', 'mould'] as const;
export type Tap = (typeof TAPS)[number];
export type TapAnswer = 'yes' | 'no' | 'notHere';

/** How a place was found, tap by tap; what was not looked at is left out. */
export type Conditions = Readonly<Partial<Record<Tap, TapAnswer>>>;

/** What is wrong where a tap is not as it should be. */
export const INCIDENT_OF_TAP = { lights: 'lightsOff', air: 'airOff', heat: 'heatOff', lid: 'dry', mould: 'mould' } as const;

/** Mould is the one that should not be there. */
const GOOD: Readonly<Record<Tap, TapAnswer>> = { lights: 'yes', air: 'yes', heat: 'yes', lid: 'yes', mould: 'no' };

export const isGood = (tap: Tap, answer: TapAnswer): boolean => answer === GOOD[tap];

/** Says that something is wrong; "not here" says nothing. */
export const isBad = (tap: Tap, answer: TapAnswer): boolean => answer !== 'notHere' && answer !== GOOD[tap];

/** The tap that shows whether an incident of that kind is over; nothing for a frost or a flood. */
export const tapOfIncident = (what: string): Tap | undefined => TAPS.find((tap) => INCIDENT_OF_TAP[tap] === what);

/** What a regime says is there. */
export interface Kept {
  readonly lightHours?: number | undefined;
  readonly heatC?: number | undefined;
  readonly air?: string | undefined;
  readonly cover?: string | undefined;
}

/**
 * What is asked at a place before its batches.
 *
 * A regime decides. Without one everything is asked that was not told last time
 * not to be there. Mould may be anywhere.
 *
 * @param regime that holds there, its own or from around it
 * @param last what was told of each tap last
 */
export function tapsToAsk(regime: Kept | undefined, last: Conditions): Tap[] {
  const isThere: Readonly<Record<Tap, boolean>> = {
    lights: regime?.lightHours !== undefined,
    air: regime?.air !== undefined,
    heat: regime?.heatC !== undefined,
    lid: regime?.cover !== undefined,
    mould: true,
  };
  return TAPS.filter((tap) => tap === 'mould' || (regime ? isThere[tap] : last[tap] !== 'notHere'));
}
