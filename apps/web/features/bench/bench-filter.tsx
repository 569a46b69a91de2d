import type { Stage } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { INPUT } from '../../ui/form/input-class.ts';
import { MARK } from '../../ui/form/plate.ts';

export interface BenchSearch {
  readonly placeId?: string;
  readonly stage?: string;
  readonly rooted?: string;
  /** `yes`: every line on one page, on a phone too. */
  readonly all?: string;
  readonly done?: string;
}

interface BenchFilterProps {
  readonly asked: BenchSearch;
  readonly stage: Stage;
  readonly stages: readonly Stage[];
  readonly places: readonly Choice[];
}

/** Which batches a job is done with: a plain form that asks for the same page again. */
export function BenchFilter({ asked, stage, stages, places }: BenchFilterProps) {
  const { bench: said, words } = useMessages();
  return (
    <form method="get" className="not-on-paper mb-8 flex flex-wrap items-end gap-4" aria-label={said.filter}>
      <label className="grow sm:grow-0">
        <span className="block font-semibold">{said.filters.placeId}</span>
        <select name="placeId" defaultValue={asked.placeId ?? ''} className={`${INPUT} sm:w-72`}>
          <option value="">{said.all}</option>
          {places.map((place) => <option key={place.value} value={place.value}>{place.words}</option>)}
        </select>
      </label>
      <label className="grow sm:grow-0">
        <span className="block font-semibold">{said.filters.stage}</span>
        <select name="stage" defaultValue={stage} className={`${INPUT} sm:w-60`}>
          {stages.map((one) => <option key={one} value={one}>{words.stage[one]}</option>)}
        </select>
      </label>
      {stages.includes('cutting') && (
        <label className="flex min-h-14 items-center gap-2"><input type="checkbox" name="rooted" value="yes" defaultChecked={asked.rooted === 'yes'} className={MARK} /> {said.rootedOnly}</label>
      )}
      <button className={buttonClass('quiet')}>{said.show}</button>
    </form>
  );
}
