import { REFUSALS } from '@sprigline/contract';
import { createHash } from 'node:crypto';
import type { Described } from './described.ts';
import { asItIs, type Html, html } from './html.ts';
import { operationPart, type Told } from './operation-part.ts';
import { shapeWords } from './shape-words.ts';
import { STYLE } from './style.ts';

export const STYLE_HASH = `sha256-${createHash('sha256').update(STYLE).digest('base64')}`;

/**
 * The description of the API as one page: no script, nothing from elsewhere.
 *
 * @param address of this install, without a slash at its end, for lines that can be pasted
 */
export function docsPage(described: Described, address: string): string {
  const { info, components: { schemas } } = described;
  const groups = byNoun(described);
  return html`<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${info.title}: the API</title><style>${asItIs(STYLE)}</style></head>
<body><a class="skip" href="#main">To the operations</a>
<header><p><a href="/">${info.title}</a></p><h1>The API of ${info.title}</h1><p>${info.summary}.</p>
${info.description.split('\n').filter(Boolean).map((words) => html`<p>${withCode(words)}</p>`)}
<p>For programs: <a href="/api/v1/openapi.json">the same in words of OpenAPI 3.1</a>. Lines to try below take a key from <code>SPRIGLINE_KEY</code>: <code>export SPRIGLINE_KEY=spr_…</code></p></header>
<nav aria-label="Nouns"><h2>Nouns</h2><ul>${groups.map(([noun]) => html`<li><a href="#noun-${noun}">${inWords(noun)}</a></li>`)}<li><a href="#refusals">Refusals</a></li><li><a href="#shapes">Shapes</a></li></ul></nav>
<main id="main" tabindex="-1">
${groups.map(([noun, operations]) => html`<section id="noun-${noun}" aria-labelledby="head-${noun}"><h2 id="head-${noun}">${inWords(noun)}</h2>
${operations.map((told) => operationPart(told, schemas, address))}</section>`)}
${refusalPart()}
${shapesPart(schemas)}
</main></body></html>
`.safe;
}

function byNoun({ paths }: Described): ReadonlyArray<readonly [string, readonly Told[]]> {
  const groups = new Map<string, Told[]>();
  for (const [path, methods] of Object.entries(paths)) {
    for (const [method, operation] of Object.entries(methods)) {
      const [noun = ''] = operation.tags;
      groups.set(noun, [...(groups.get(noun) ?? []), { method, path, operation }]);
    }
  }
  return [...groups].sort(([one], [other]) => one.localeCompare(other));
}

/** `DonorTree` → `Donor tree` */
const inWords = (noun: string): string => noun.replaceAll(/\B[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** Words between backticks are code. */
const withCode = (words: string): Html => html`${words.split('`').map((part, at) => (at % 2 === 1 ? html`<code>${part}</code>` : html`${part}`))}`;

const refusalPart = (): Html => html`<section id="refusals" aria-labelledby="head-refusals"><h2 id="head-refusals">Refusals</h2>
<p>Every error is a problem after RFC 9457, <code>application/problem+json</code>: <code>type</code> ends in one of these codes, <code>detail</code> says what happened, <code>instance</code> is the request’s own id. A code never changes its meaning; new ones may come.</p>
<div class="wide" role="region" tabindex="0" aria-label="All refusals"><table><caption>All refusals</caption><thead><tr><th scope="col">Code</th><th scope="col">Status</th><th scope="col">Means</th></tr></thead>
<tbody>${Object.entries(REFUSALS).sort(([one], [other]) => one.localeCompare(other)).map(([code, { status, title }]) => html`<tr id="refusal-${code}"><th scope="row"><code>${code}</code></th><td>${String(status)}</td><td>${title}</td></tr>
`)}</tbody></table></div></section>`;

const shapesPart = (schemas: Described['components']['schemas']): Html => html`<section id="shapes" aria-labelledby="head-shapes"><h2 id="head-shapes">Shapes</h2>
${Object.entries(schemas).map(([name, shape]) => html`<article id="shape-${name}" class="shape"><h3>${name}</h3>
${shape.properties ? html`<dl>${Object.entries(shape.properties).map(([field, part]) => html`<div><dt><code>${field}</code>${!shape.required?.includes(field) && ' (may be left out)'}</dt><dd>${shapeWords(part)}</dd></div>`)}</dl>` : html`<p>${shapeWords(shape)}</p>`}</article>
`)}</section>`;
