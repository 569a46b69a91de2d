export { createApi, startApi, type Web } from './start.ts';
export { makeResetLink, makeSetupLink } from './sign-in/links-from-the-machine.ts';
export { Settings, type SettingsInput } from './config/settings.ts';
