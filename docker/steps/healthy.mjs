// Ends with 0 when the service answers, as Docker's health check wants it.
const answer = await fetch(`http://127.0.0.1:${process.env['PORT'] ?? 3000}/healthz`, { signal: AbortSignal.timeout(5000) }).catch(() => undefined);
process.exit(answer?.ok ? 0 : 1);
