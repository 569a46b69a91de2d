/** Address of what works without a signal: `fieldAddress('harrowdale', 'round', id)`; without parts, of its first screen. */
export const fieldAddress = (...parts: readonly string[]): string => `/field${parts.length === 0 ? '' : `#/${parts.map(encodeURIComponent).join('/')}`}`;
