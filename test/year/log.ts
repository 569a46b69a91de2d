/** Everything that the process writes from now on, to whichever stream and by whichever way. */
export function listenToLog(): { readonly lines: readonly string[]; stop: () => void } {
  const lines: string[] = [];
  const streams = [process.stdout, process.stderr];
  const writes = streams.map((stream) => stream.write);
  const hear = (...told: readonly unknown[]): boolean => lines.push(told.map((one) => (typeof one === 'string' ? one : one instanceof Uint8Array ? new TextDecoder().decode(one) : JSON.stringify(one) ?? '')).join(' ')) > 0;
  for (const stream of streams) stream.write = hear as typeof stream.write;
  const names = ['log', 'info', 'warn', 'error', 'debug'] as const;
  const says = names.map((name) => console[name]);
  for (const name of names) console[name] = hear;
  return {
    lines,
    stop: () => {
      streams.forEach((stream, at) => Object.assign(stream, { write: writes[at] }));
      names.forEach((name, at) => Object.assign(console, { [name]: says[at] }));
    },
  };
}
