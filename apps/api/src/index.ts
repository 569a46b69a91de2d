export { createApi, startApi, type Web } from './start.ts';
export { Settings, type SettingsInput } from './config/settings.ts';
