/** Whether a number can be a number of things: whole, not negative, and held exactly by a double. */
export const isCount = (value: number): boolean => Number.isSafeInteger(value) && value >= 0;
