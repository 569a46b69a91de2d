import { useMessages, useTranslations } from 'next-intl';
import { useState } from 'react';
import { canSeal } from '../../lib/phone/seal.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

/** So long a phone may look for satellites. Milliseconds. */
const PATIENCE_MS = 60_000;

interface Fix {
  readonly latitude: string;
  readonly longitude: string;
  readonly uncertaintyM: number;
  /** The moment, so that fields show a second fix as well. */
  readonly at: number;
}

type Looking = 'looking' | 'denied' | 'notFound' | undefined;

/** Where the tree stands: measured by the phone, or typed. Lives in these fields alone until it is sealed. */
export function PlaceFields() {
  const { hints } = useMessages().exactPlace;
  const t = useTranslations('outing.place');
  const [fix, setFix] = useState<Fix>();
  const [looking, setLooking] = useState<Looking>();
  if (!canSeal()) return <p className="max-w-prose rounded-md border-2 border-rust bg-rust-wash p-3 font-semibold text-rust">{t('cannotSeal')}</p>;

  function measure(): void {
    if (!('geolocation' in navigator)) return setLooking('notFound');
    setLooking('looking');
    navigator.geolocation.getCurrentPosition(
      ({ coords, timestamp }) => {
        setFix({ latitude: coords.latitude.toFixed(6), longitude: coords.longitude.toFixed(6), uncertaintyM: Math.max(1, Math.ceil(coords.accuracy)), at: timestamp });
        setLooking(undefined);
      },
      ({ code }) => setLooking(code === 1 ? 'denied' : 'notFound'),
      { enableHighAccuracy: true, maximumAge: 0, timeout: PATIENCE_MS },
    );
  }

  return (
    <fieldset className="grid w-full max-w-prose gap-4 rounded-md border-2 border-line-strong p-4">
      <legend className="px-1 text-lg font-semibold">{t('title')}</legend>
      <p className="text-sm text-ink-soft">{t('lead')}</p>
      <button type="button" onClick={measure} aria-disabled={looking === 'looking'} className={buttonClass('quiet')}>{t(fix ? 'again' : 'measure')}</button>
      <div role="status" className="empty:hidden">
        {looking ? <p className="font-semibold">{t(looking)}</p> : fix && <p className="font-semibold">✓ {t('found', { metres: fix.uncertaintyM })}</p>}
      </div>
      {/* Not the keypad for numbers: on some phones it has no minus. */}
      <TextField key={`a${fix?.at}`} name="place/latitude" isOptional value={fix?.latitude} hint={hints.latitude} />
      <TextField key={`o${fix?.at}`} name="place/longitude" isOptional value={fix?.longitude} hint={hints.longitude} />
      <TextField key={`u${fix?.at}`} name="place/uncertaintyM" keypad="numeric" isOptional value={fix?.uncertaintyM} hint={hints.uncertaintyM} />
      <TextField name="place/elevationM" isOptional />
      <ProseField name="place/directions" isOptional rows={2} hint={hints.directions} />
    </fieldset>
  );
}
