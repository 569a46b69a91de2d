export { createApi, startApi, type Web } from './start.ts';
export { makeResetLink, makeSetupLink } from './sign-in/links-from-the-machine.ts';
export { Settings, type SettingsInput } from './config/settings.ts';
export type { Finding } from './verify/finding.ts';
export { rebuildProjections } from './verify/rebuild.ts';
export { verify } from './verify/verify.ts';
