/** What a browser tells of its storage; nothing of it outside of HTTPS and the machine itself. */
export interface StorageTold {
  readonly storage?: {
    readonly getDirectory?: (() => Promise<unknown>) | undefined;
    readonly estimate?: (() => Promise<{ readonly quota?: number | undefined }>) | undefined;
  } | undefined;
}

/** How browsers refuse a folder of the site's own in a private window: the first is Firefox, the other Safari. */
const REFUSED = new Set(['SecurityError', 'UnknownError']);

/** An ordinary window is given a part of the disk, a private one a part of the memory. Bytes. */
const LITTLE = 300_000_000;

/**
 * Whether this looks like a private window, or a browser that forgets everything when it is closed.
 *
 * A sign and no proof, in both directions: browsers hide it on purpose, newer Chromiums altogether. What a browser does not tell is
 * no sign. That it would not promise to keep things is none either, since ordinary windows often do not.
 */
export async function looksPrivate({ storage }: StorageTold): Promise<boolean> {
  const refused = await storage?.getDirectory?.().then(() => false, (error: unknown) => REFUSED.has(String(Object(error).name)));
  if (refused) return true;
  const told = await storage?.estimate?.().catch(() => undefined);
  return told?.quota !== undefined && told.quota > 0 && told.quota < LITTLE;
}
