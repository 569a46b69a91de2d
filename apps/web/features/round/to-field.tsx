'use client';

import { useEffect } from 'react';

/** Goes on to what works without a signal. Replaces this page, so that going back leads to where one came from. */
export function ToField({ href, words }: { href: string; words: string }) {
  useEffect(() => window.location.replace(href), [href]);
  return <p role="status"><a href={href} className="inline-flex min-h-14 items-center underline">{words}</a></p>;
}
