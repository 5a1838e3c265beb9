import type { PhonePage, PhoneSession } from "./types";

/** As text between tags and in attributes. */
const escaped = (text: string): string => text.replace(/[&<>"']/g, (char) => `&#${char.charCodeAt(0)};`);

/** JSON that cannot end its script element, nor be taken for a comment or a line's end. @source WHATWG HTML, "Restrictions for contents of script elements" */
export const embedded = (value: unknown): string => JSON.stringify(value).replace(/[<>&\u2028\u2029]/g, (char) => `\\u${char.charCodeAt(0).toString(16).padStart(4, "0")}`);

/** A program cannot hold the end of its own element either; in a string or a pattern the backslash changes nothing. */
const inScript = (script: string): string => script.replace(/\r\n?/g, "\n").replace(/<\/(script)/gi, "<\\/$1").replace(/<!--/g, "<\\!--");
const inStyle = (style: string): string => style.replace(/\r\n?/g, "\n").replace(/<\/(style)/gi, "<\\/$1");

/** "sha256-...", which lets one inline text run and no other. @source W3C Content Security Policy Level 3, hash-source */
async function hashSource(text: string): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text)));
  return `'sha256-${btoa(String.fromCharCode(...digest))}'`;
}

/** The plan in plain words, for a viewer that runs no programs. */
function plainList({ blocks }: PhoneSession): string {
  return blocks.map(({ name, station, shots, marks }) => {
    const rows = shots.map((shot) => {
      const mark = marks.find(({ key }) => key === shot.mark);
      return `<li>${escaped(`${shot.short}: ${shot.subject}, ${shot.seconds} s${mark ? `; ${mark.letter}, ${mark.distance.toFixed(1)} m away, ${mark.height.toFixed(1)} m high` : ""}`)}</li>`;
    }).join("");
    return `<h2>${escaped(name)}${station === "" ? "" : `, ${escaped(station)}`}</h2><ul>${rows || "<li>No shot is planned.</li>"}</ul>`;
  }).join("");
}

/** The whole page as one file: it loads nothing, sends nothing, and runs only its own program. */
export async function phoneSheetHtml(session: PhoneSession, page: PhonePage): Promise<string> {
  const [script, style] = [inScript(page.script), inStyle(page.style)];
  const policy = [
    "default-src 'none'", `script-src ${await hashSource(script)}`, `style-src ${await hashSource(style)}`, "base-uri 'none'", "form-action 'none'",
  ].join("; ");
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<meta name="format-detection" content="telephone=no">
<title>${escaped(`${session.title}: phone sheet`)}</title>
<style>${style}</style>
</head>
<body>
<div id="sheet"></div>
<noscript><main class="plain"><h1>${escaped(session.title)}</h1><p>Timers, ticks and the way back need this page's program, and this viewer does not run it. Open the file in a browser. Until then, the plan:</p>${plainList(session)}</main></noscript>
<script type="application/json" id="session">${embedded(session)}</script>
<script>${script}</script>
</body>
</html>
`;
}
