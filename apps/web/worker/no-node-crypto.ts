/** In place of Node’s own module, which no browser has. */
export const webcrypto = undefined;
