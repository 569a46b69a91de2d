import { expect, test } from 'vitest';
import { looksPrivate, type StorageTold } from './private-window.ts';

const GB = 1_000_000_000;
const refuses = (name: string) => () => Promise.reject(new DOMException('No', name));
const gives = () => Promise.resolve({});
const quota = (bytes: number | undefined) => () => Promise.resolve({ quota: bytes, usage: 0 });

test.each<readonly [string, StorageTold, boolean]>([
  // Firefox's own test of private windows wants this name of it (dom/tests/mochitest/fs/test_privateWin.html). MDN lists both names, of
  // "some browsers", under StorageManager.getDirectory(); that UnknownError is Safari's is what people report of Safari 18.
  ['Firefox, private', { storage: { getDirectory: refuses('SecurityError'), estimate: quota(10 * GB) } }, true],
  ['Safari, private', { storage: { getDirectory: refuses('UnknownError'), estimate: quota(20 * GB) } }, true],
  // Until version 137 the quota of such a window was cut out of memory; that of an ordinary one is more than half of the disk. How much: from memory.
  ['Chromium until 137, private, on a phone with 4 GB of memory', { storage: { getDirectory: gives, estimate: quota(0.25 * GB) } }, true],
  // From 138 on it tells usage and up to 10 GiB in all windows alike (chromestatus.com, "Predictable reported storage quota").
  ['Chromium from 138 on, private: it does not tell', { storage: { getDirectory: gives, estimate: quota(10 * 2 ** 30) } }, false],

  ['Firefox', { storage: { getDirectory: gives, estimate: quota(10 * GB) } }, false],
  ['Firefox of before there was such a folder (111)', { storage: { estimate: quota(2 * GB) } }, false],
  ['Safari', { storage: { getDirectory: gives, estimate: quota(60 * GB) } }, false],
  ['Safari 15, which tells no quota', { storage: { getDirectory: gives } }, false],
  ['Chromium', { storage: { getDirectory: gives, estimate: quota(30 * GB) } }, false],
  ['Chromium from 138 on, on a disk of 1 GB', { storage: { getDirectory: gives, estimate: quota(2 ** 30) } }, false],
  ['a browser that keeps its quota to itself', { storage: { getDirectory: gives, estimate: quota(undefined) } }, false],
  ['a browser that tells nought, which is no quota', { storage: { getDirectory: gives, estimate: quota(0) } }, false],
  // A disk that is full or broken is another trouble, and told elsewhere.
  ['a browser that fails for another reason', { storage: { getDirectory: refuses('QuotaExceededError'), estimate: refuses('TypeError') as never } }, false],
  ['a page over plain HTTP, where no browser tells anything', {}, false],
])('%s', async (_, told, isPrivate) => {
  expect(await looksPrivate(told)).toBe(isPrivate);
});
