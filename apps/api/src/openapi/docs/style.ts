/** The page's own colours, those of the web app; wide enough for two columns it has one of nouns. */
export const STYLE = `
:root { color-scheme: light dark; --paper: #f5f1e6; --sheet: #fffdf8; --line: #cbc3ae; --ink: #1b2420; --soft: #43504a; --link: #1c4a3c; --focus: #1d3fb8; }
@media (prefers-color-scheme: dark) { :root { --paper: #131916; --sheet: #1b2320; --line: #3a4641; --ink: #f0f1e6; --soft: #bcc7be; --link: #a8d5b9; --focus: #b9c8f5; } }
* { box-sizing: border-box; }
html { scroll-padding-top: 1rem; }
body { margin: 0 auto; max-width: 75rem; padding: 1rem; background: var(--paper); color: var(--ink); font: 1.0625rem/1.55 system-ui, sans-serif; overflow-wrap: anywhere; }
a { color: var(--link); text-underline-offset: .2em; }
:focus-visible { outline: 3px solid var(--focus); outline-offset: 2px; }
.skip { position: absolute; left: -99rem; } .skip:focus { left: 1rem; background: var(--sheet); padding: .75rem; }
header, main p { max-width: 48rem; }
h1 { line-height: 1.15; } h2 { margin-top: 3rem; border-top: 2px solid var(--ink); padding-top: .5rem; } h3 { margin: 0; }
nav h2 { font-size: 1rem; margin: 2rem 0 0; }
nav ul { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: 0 1rem; } nav a { display: inline-block; padding: .5rem 0; }
article { background: var(--sheet); border: 1px solid var(--line); border-radius: .5rem; padding: 1rem; margin: 1rem 0; }
.way { margin: .25rem 0; } .method { font-weight: 700; }
code, pre { font: .9375rem/1.5 ui-monospace, monospace; }
pre { white-space: pre-wrap; border-left: .25rem solid var(--line); padding: .5rem .75rem; margin: 1rem 0; }
.wide { overflow-x: auto; } table { border-collapse: collapse; width: 100%; overflow-wrap: normal; } caption { text-align: left; font-weight: 700; padding: .5rem 0; }
th, td { text-align: left; vertical-align: top; border-top: 1px solid var(--line); padding: .35rem .75rem .35rem 0; } tbody th { font-weight: 400; }
dl { margin: .5rem 0 0; } dl div { padding: .25rem 0; border-top: 1px solid var(--line); } dd { margin: 0 0 0 1rem; color: var(--soft); }
@media print {
  :root { --paper: #fff; --sheet: #fff; --line: #999; --ink: #000; --soft: #000; --link: #000; }
  body { max-width: none; padding: 0; font-size: 9pt; } code, pre { font-size: 8pt; } nav, .skip { display: none; }
  article { padding: .5rem 0; border-width: 1px 0 0; border-radius: 0; } h2, h3 { break-after: avoid; } tr, pre { break-inside: avoid; } .wide { overflow: visible; } a { text-decoration: none; }
}
`;
