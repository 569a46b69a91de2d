'use client';

import { useTranslations } from 'next-intl';
import { useState } from 'react';
import { shownLabelCode } from '@sprigline/domain';
import { chime } from '../../lib/chime.ts';
import { fieldAddress } from '../../lib/field-address.ts';
import { newId } from '../../lib/new-id.ts';
import { keepHere, takeBackHere } from '../../lib/phone/device.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { NarrowChoice } from '../../ui/form/narrow-choice.tsx';
import { type Choosable, narrowed } from '../../ui/form/narrowed.ts';
import { KeptBanner } from '../../ui/kept-banner.tsx';
import { PageHeading } from '../../ui/page-heading.tsx';
import { claimWork, type LabelledHere } from './claims-here.ts';
import { type Here } from './found-here.ts';
import { thingsHere } from './things-here.ts';
import { useHere } from './use-here.ts';

interface ClaimHereProps {
  readonly programme: string;
  readonly code: string;
  readonly walkId: string | undefined;
}

const WAYS = ['act', 'stick', 'batch', 'donorTree', 'place'] as const;
type Way = (typeof WAYS)[number];
const FIELD = { batch: 'batchId', donorTree: 'donorTreeId', place: 'placeId' } as const;

/** A label that this phone does not know yet: what is it on? */
export function ClaimHere({ programme, code, walkId }: ClaimHereProps) {
  const t = useTranslations('scan.here');
  const field = useTranslations('field');
  const here = useHere(programme);
  const [way, choose] = useState<Way>();
  // What is on something is offered for nothing else.
  const [isOn, setOn] = useState(false);
  const scan = fieldAddress(programme, 'scan', ...(walkId === undefined ? [] : [walkId]));
  if (here === undefined) return <p role="status">{field('opening')}</p>;
  return (
    <>
      <p><a href={scan} className="inline-flex min-h-14 items-center underline">{t('again')}</a></p>
      <PageHeading kind={shownLabelCode(code)} lead={t('claimLead')}>{t('claim')}</PageHeading>
      {here === 'none' && <p role="alert" className="max-w-prose">{t('notPacked')}</p>}
      {here !== 'none' && (
        <div className="grid max-w-md gap-4">
          <ul hidden={isOn} className="grid gap-2">
            {WAYS.map((one) => (
              <li key={one} className="grid">
                {one === 'stick'
                  ? <a href={fieldAddress(programme, 'stick', code)} className={buttonClass('quiet')}>{t('ways.stick')}</a>
                  : <button type="button" aria-expanded={way === one} onClick={() => choose(one)} className={`${buttonClass('quiet')} aria-expanded:border-juniper aria-expanded:bg-lichen aria-expanded:text-on-lichen`}>{t(`ways.${one}`)}</button>}
              </li>
            ))}
          </ul>
          {way !== undefined && way !== 'stick' && <Which key={way} programme={programme} code={code} way={way} here={here} walkId={walkId} scan={scan} setOn={setOn} />}
        </div>
      )}
    </>
  );
}

interface WhichProps {
  readonly programme: string;
  readonly code: string;
  readonly way: Exclude<Way, 'stick'>;
  readonly here: Here;
  readonly walkId: string | undefined;
  readonly scan: string;
  readonly setOn: (isOn: boolean) => void;
}

/** Which one: then what is done with its plants, or the label is put on it. */
function Which({ programme, code, way, here, walkId, scan, setOn }: WhichProps) {
  const t = useTranslations('scan.here');
  const [chosen, choose] = useState<string>();
  const [isMissing, setMissing] = useState(false);
  const [kept, setKept] = useState<{ readonly id: string; readonly state: 'busy' | 'kept' | 'undone' | 'failed' }>();
  const [isTooLate, setTooLate] = useState(false);
  const things = thingsHere(way === 'act' ? 'batch' : way, here, walkId);
  const thing = things.find(({ id }) => id === chosen);

  async function keep(): Promise<void> {
    if (!thing) return setMissing(true);
    if (way === 'act') return window.location.assign(fieldAddress(programme, 'batch', thing.walkId, thing.id, code));
    if (kept?.state === 'busy') return;
    const id = newId();
    setKept({ id, state: 'busy' });
    try {
      const on: LabelledHere = { [FIELD[way]]: thing.id };
      await keepHere(programme, [claimWork(programme, id, { code, on })]);
      setKept({ id, state: 'kept' });
      setOn(true);
      chime('kept');
    } catch {
      setKept({ id, state: 'failed' });
    }
  }

  async function undo(id: string): Promise<void> {
    const isOut = (await takeBackHere([id])).length > 0;
    setTooLate(isOut);
    if (isOut) return;
    setKept({ id, state: 'undone' });
    setOn(false);
    chime('undone');
  }

  const isKept = kept?.state === 'kept';
  return (
    <div className="grid gap-4">
      {!isKept && <NarrowChoice legend={t(`which.${way}`)} find={(typed) => narrowed(things satisfies readonly Choosable[], typed, [], chosen)} chosen={chosen} choose={(id) => { setMissing(false); choose(id); }} />}
      {isMissing && <p role="alert" className="font-semibold text-rust">{t('chooseOne')}</p>}
      <KeptBanner state={kept?.state} title={t(kept?.state === 'undone' ? 'unclaimed' : 'claimed', { code: shownLabelCode(code), label: thing?.name ?? '' })} undo={kept ? () => void undo(kept.id) : undefined} />
      {isTooLate && <p role="alert" className="font-semibold text-rust">{t('tooLate')}</p>}
      {isKept
        ? <a href={scan} className={`${buttonClass()} min-h-16 text-lg`}>{t('next')}</a>
        : <button type="button" onClick={() => void keep()} aria-disabled={kept?.state === 'busy'} className={`${buttonClass(thing ? 'main' : 'quiet')} min-h-16 text-lg`}>{t(way === 'act' ? 'goOn' : 'isOnIt')}</button>}
    </div>
  );
}
