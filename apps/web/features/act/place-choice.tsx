import type { Pack } from '@sprigline/contract';
import { NarrowChoice } from '../../ui/form/narrow-choice.tsx';
import { placesToGo } from './places-to-go.ts';

interface PlaceChoiceProps {
  readonly legend: string;
  readonly places: Pack['places'];
  readonly act: Parameters<typeof placesToGo>[1];
  /** Used last on this phone, newest first. */
  readonly last: readonly string[];
  readonly chosen: string | undefined;
  readonly choose: (placeId: string) => void;
}

/** A place of the pack that fits what is done. */
export function PlaceChoice({ legend, places, act, last, chosen, choose }: PlaceChoiceProps) {
  return <NarrowChoice legend={legend} find={(typed) => placesToGo(places, act, typed, last, chosen)} chosen={chosen} choose={choose} />;
}
