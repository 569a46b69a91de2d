import { AllowFor, CompareBy, CurveBy } from '@sprigline/contract';

export type Search = Readonly<Record<string, string | string[] | undefined>>;

/** What the address of the page chooses beside the filters that all readings have. */
export interface Asked {
  readonly by: CompareBy;
  readonly against?: string;
  readonly allowFor?: AllowFor;
  /** Key of the group whose trial beside the other is laid out, and how often the dice were thrown. */
  readonly trial?: string;
  readonly seed: number;
}

/** Partners are told no recipe, and no bench of the nursery. */
export const FOR_PARTNERS: readonly CompareBy[] = ['ageClass', 'taxon', 'stand', 'season'];

/** Whatever is empty or makes no sense is left out, so that a shortened or mistyped link still shows something. */
export function askedIn(search: Search, choices: readonly CompareBy[] = CompareBy.options): Asked {
  const told = (name: string): string | undefined => (typeof search[name] === 'string' && search[name] !== '' ? search[name] : undefined);
  const [against, trial, allowed] = [told('against'), told('trial'), AllowFor.safeParse(search['allowFor']).data];
  const by = choices.find((one) => one === search['by']) ?? choices[0] ?? 'recipe';
  const seed = Number(told('seed'));
  return {
    by, seed: Number.isInteger(seed) && seed > 0 && seed < 1_000_000 ? seed : 1,
    ...(against !== undefined && against.length <= 500 && { against }),
    // What is compared cannot be allowed for as well.
    ...(allowed !== undefined && allowed !== by && { allowFor: allowed }),
    ...(trial !== undefined && { trial }),
  };
}

/** The same as the API asks for it. */
export const queryFor = ({ by, against, allowFor }: Asked, chosen: Readonly<Record<string, string>>): Record<string, string> => ({
  ...chosen, by, ...(against !== undefined && { against }), ...(allowFor !== undefined && { allowFor }),
});

export const addressOf = (query: Readonly<Record<string, string>>): string => `?${new URLSearchParams(query).toString()}`;

/** A trial can give each tree both of these; of an old tree nobody makes a young one. */
export const canBeLaidOut = (by: CompareBy): boolean => ['recipe', 'hormone', 'medium', 'wound', 'place'].includes(by);

/** What curves over time are told apart by as well. */
export const curvesBy = (by: CompareBy): CurveBy | undefined => CurveBy.options.find((one) => one === by);
