'use client';

import { useEffect, useState } from 'react';
import { signOut } from './sign-out.action.ts';

interface SignOutFormProps {
  readonly leave: string;
  /** Said where something is only on this device. */
  readonly unsentStays: string;
}

/** Signs out, and takes off the device what was packed on it. Works without script, where nothing was packed either. */
export function SignOutForm({ leave, unsentStays }: SignOutFormProps) {
  const [hasUnsent, setUnsent] = useState(false);
  useEffect(() => {
    const look = async (): Promise<boolean> => {
      const { signing, store } = await phone();
      return (await signing.unsentHere(store)) > 0;
    };
    look().then(setUnsent, () => undefined);
  }, []);
  return (
    <form action={signOut} onSubmit={() => void phone().then(({ signing, store }) => signing.clearForSigningOut(store)).catch(() => undefined)}>
      {hasUnsent && <p className="mb-2 max-w-prose text-sm font-semibold">{unsentStays}</p>}
      <button className="min-h-14 cursor-pointer rounded-md border-2 border-current px-5 font-semibold">{leave}</button>
    </form>
  );
}

/** The button stands on every page, so what it needs of the phone comes later. */
async function phone() {
  const [signing, { theStore }] = await Promise.all([import('../../lib/phone/signing-out.ts'), import('../../lib/phone/store.ts')]);
  return { signing, store: await theStore() };
}
