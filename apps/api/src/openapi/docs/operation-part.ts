import type { Described, Operation, Parameter, Shape } from './described.ts';
import { type Html, html } from './html.ts';
import { exampleOf, nameOf, shapeWords } from './shape-words.ts';

/** Where an operation answers, with what stands around it. */
export interface Told {
  readonly method: string;
  readonly path: string;
  readonly operation: Operation;
}

type Shapes = Described['components']['schemas'];

/** One operation: what it does, who may, what it reads, a line to try it with, what it answers, how it can say no. */
export function operationPart({ method, path, operation }: Told, shapes: Shapes, address: string): Html {
  const body = bodyOf(operation);
  const named = body?.$ref === undefined ? body : shapes[nameOf(body.$ref)];
  const [done] = Object.entries(operation.responses).filter(([status]) => status !== 'default');
  const answered = Object.entries(done?.[1].content ?? {})[0];
  return html`<article id="${operation.operationId}">
<h3>${operation.summary}</h3>
<p class="way"><span class="method">${method.toUpperCase()}</span> <code>${path}</code></p>
${(operation.description ?? '').split('\n\n').filter(Boolean).map((words) => html`<p>${words}</p>`)}
${operation['x-scope'] !== undefined && html`<p>Scope of a key: <code>${operation['x-scope']}</code></p>`}
${operation.parameters && fields(`In the address and head of ${operation.summary}`, operation.parameters.map(ofParameter))}
${body && html`<p>Body: ${shapeWords(body)}</p>`}
${named?.properties && fields(`In the body of ${operation.summary}`, Object.entries(named.properties).map(([name, shape]) => ofField(name, shape, named.required ?? [])))}
<pre tabindex="0" aria-label="Example of ${operation.summary}"><code>${curlLine({ method, path, operation }, shapes, address)}</code></pre>
<p>Answers ${done?.[0] ?? ''}${answered && html`: ${answered[1].schema ? shapeWords(answered[1].schema) : html`a file`} as <code>${answered[0]}</code>`}.
Refuses with ${refusals({ method, path, operation })}.</p>
</article>`;
}

const bodyOf = ({ requestBody }: Operation): Shape | undefined => Object.values(requestBody?.content ?? {})[0]?.schema;

interface Field {
  readonly name: string;
  readonly where: string;
  readonly shape: Shape;
  readonly needed: boolean;
}

const ofParameter = ({ name, in: where, schema, required = false }: Parameter): Field => ({ name, where, shape: schema, needed: required });

const ofField = (name: string, shape: Shape, required: readonly string[]): Field => ({ name, where: 'body', shape, needed: required.includes(name) });

const fields = (caption: string, rows: readonly Field[]): Html => html`<div class="wide" role="region" tabindex="0" aria-label="${caption}"><table><caption>${caption}</caption>
<thead><tr><th scope="col">Field</th><th scope="col">In</th><th scope="col">Must</th><th scope="col">What it may be</th></tr></thead>
<tbody>${rows.map(({ name, where, shape, needed }) => html`<tr><th scope="row"><code>${name}</code></th><td>${where}</td><td>${needed ? 'yes' : 'no'}</td><td>${shapeWords(shape)}${shape.default !== undefined && html`, else <code>${JSON.stringify(shape.default)}</code>`}</td></tr>
`)}</tbody></table></div>`;

/** To be pasted into a shell after the parts in braces are filled in. */
function curlLine({ method, path, operation }: Told, shapes: Shapes, address: string): string {
  const parts = [method === 'get' ? 'curl' : `curl -X ${method.toUpperCase()}`];
  parts.push(path.startsWith('/api/v1/programmes/') ? '-H "Authorization: Bearer $SPRIGLINE_KEY"' : '-b cookies.txt -c cookies.txt');
  if (operation.parameters?.some(({ name }) => name === 'If-Match')) parts.push(`-H 'If-Match: "…"'`);
  const [media, content] = Object.entries(operation.requestBody?.content ?? {})[0] ?? [];
  if (media !== undefined) parts.push(`-H 'Content-Type: ${media}'`);
  if (content?.schema) parts.push(`-d '${JSON.stringify(exampleOf(content.schema, shapes))}'`);
  else if (media !== undefined) parts.push('--data-binary @sheet.csv');
  return `${parts.join(' \\\n  ')} \\\n  '${address}${path}'`;
}

/** What every route of this kind can say no with; what the ledger or a record says besides stands in the list of refusals. */
function refusals({ method, path, operation }: Told): Html {
  const has = (name: string): boolean => operation.parameters?.some((parameter) => parameter.name === name) ?? false;
  const codes = [
    ...(operation.parameters || operation.requestBody ? ['http/unfit-request'] : []),
    ...(path.includes('{programme}') ? ['http/sign-in-first', 'http/not-allowed', 'http/not-found'] : []),
    ...(operation['x-scope'] === undefined ? [] : ['key/scope-needed']),
    ...(has('after') ? ['http/bad-cursor'] : []),
    ...(has('If-Match') ? ['http/version-needed', 'http/version-stale'] : []),
    ...(has('id') ? ['record/unknown'] : []),
    ...(method === 'get' ? [] : ['http/bad-request', 'http/too-large']),
    'http/quota-exceeded',
  ];
  return html`${codes.map((code, at) => html`${at > 0 && ', '}<a href="#refusal-${code}"><code>${code}</code></a>`)}`;
}
