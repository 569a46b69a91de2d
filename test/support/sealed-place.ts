/** Seals a place as a phone does: by the web app's own code. */
export { type SealFor, sealPlace } from '../../apps/web/lib/phone/seal.ts';
