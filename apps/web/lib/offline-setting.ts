/** Whether whoever runs this install wants browsers to give up what opens without a signal. Apart from the other settings, since the proxy reads no more than it must. */
export const isOfflineSwitchedOff = (): boolean => process.env['OFFLINE']?.trim() === 'off';
