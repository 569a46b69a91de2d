import { rescueFile } from '../../lib/phone/rescue-file.ts';
import { theStore } from '../../lib/phone/store.ts';

/** Offers what is only on this phone as a file. @param id only that one */
export async function saveFile(id?: string): Promise<void> {
  const { name, text } = await rescueFile(await theStore(), new Date(), id);
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  Object.assign(document.createElement('a'), { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
