/** Under this token the parsed settings are injected. */
export const SETTINGS = Symbol('settings');
