import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import vm from 'node:vm';

/** The page that a phone keeps. */
const PAGE = 'field';
/** One that is the framework's own, and nothing else. */
const BARE = '_global-error';

/**
 * @typedef {object} FieldAssets
 * @property {string[]} framework scripts that any page of the framework loads, from the folder of the build on
 * @property {string[]} bare scripts that a page needs besides, of which nothing is ours
 * @property {string[]} own scripts of the field page besides those of any page
 * @property {string[]} lazy scripts, and their styles, that it loads once they are used
 * @property {string[]} styles
 * @property {string[]} fonts
 */

/**
 * What the field page is made of, read from the manifests of a build.
 *
 * @param {string} build folder that the build was written to
 * @returns {FieldAssets}
 */
export function fieldAssets(build) {
  /** @param {string} path */
  const text = (path) => readFileSync(join(build, path), 'utf8');
  const framework = /** @type {{ rootMainFiles: string[] }} */ (JSON.parse(text('build-manifest.json'))).rootMainFiles;
  const [field, bare] = [PAGE, BARE].map((page) => pageManifest(text(`server/app/${page}/page_client-reference-manifest.js`), `/${page}/page`));
  const own = scriptsOf(/** @type {PageManifest} */ (field), framework);
  const styles = unique(Object.values(/** @type {PageManifest} */ (field).entryCSSFiles).flat().map(({ path }) => path));
  return { framework, own, styles, bare: scriptsOf(/** @type {PageManifest} */ (bare), framework), lazy: lazyOf(own, [...framework, ...own], text), fonts: unique(styles.flatMap((path) => fontsIn(text(path)))) };
}

/**
 * The reader of labels, as next.config.ts has put it there.
 *
 * @param {string} published folder of files that are served as they are
 * @returns {string} its address
 */
export function readerOf(published) {
  const name = readdirSync(join(published, 'scan')).find((file) => /^reader-[\d.]+\.wasm$/.test(file));
  if (name === undefined) throw new Error('the reader of labels was not put into public/scan');
  return `/scan/${name}`;
}

/**
 * @typedef {object} PageManifest
 * @property {Record<string, { chunks: string[] }>} clientModules
 * @property {Record<string, { path: string }[]>} entryCSSFiles
 * @property {Record<string, string[]>} entryJSFiles
 */

/** @param {PageManifest} manifest @param {string[]} framework */
function scriptsOf({ clientModules, entryJSFiles }, framework) {
  const named = [...Object.values(clientModules).flatMap(({ chunks }) => chunks), ...Object.values(entryJSFiles).flat()];
  return unique(named.map(fromBuild)).filter((path) => path.endsWith('.js') && !framework.includes(path));
}

/** @param {string} script @param {string} page @returns {PageManifest} */
function pageManifest(script, page) {
  const context = { globalThis: /** @type {{ __RSC_MANIFEST?: Record<string, PageManifest> }} */ ({}) };
  vm.runInNewContext(script, context);
  const manifest = context.globalThis.__RSC_MANIFEST?.[page];
  if (!manifest) throw new Error(`the build has no manifest of ${page}`);
  return manifest;
}

/**
 * Scripts and styles named in scripts, and in those again.
 * @param {string[]} from
 * @param {string[]} known
 * @param {(path: string) => string} text
 */
function lazyOf(from, known, text) {
  /** @type {string[]} */
  const found = [];
  for (const todo = [...from]; todo.length > 0; ) {
    const script = text(/** @type {string} */ (todo.pop()));
    for (const [path] of script.matchAll(/static\/chunks\/[\w~.-]+\.(?:js|css)/g)) {
      if (known.includes(path) || found.includes(path)) continue;
      found.push(path);
      if (path.endsWith('.js')) todo.push(path);
    }
  }
  return found;
}

/** Styles lie in the folder beside that of the fonts. @param {string} style */
const fontsIn = (style) => [...style.matchAll(/url\(["']?\.\.\/(media\/[\w~.-]+\.woff2)/g)].map(([, path]) => `static/${path}`);

/** @param {string} path */
const fromBuild = (path) => path.replace(/^\/_next\//, '');

/** @template T @param {T[]} all @returns {T[]} */
const unique = (all) => [...new Set(all)];
