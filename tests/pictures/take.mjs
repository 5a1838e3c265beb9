/**
 * Takes the pictures of the README: each place of the app, and the first pages of the three papers.
 * Run after a build: node tests/pictures/take.mjs
 */
import { chromium } from "@playwright/test";
import { execFileSync, spawn } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const here = fileURLToPath(new URL(".", import.meta.url));
const root = join(here, "../..");
const cli = join(root, "dist/electron/cli.mjs");
const folder = mkdtempSync(join(tmpdir(), "repwright-pictures-"));
const browserPath = process.env.CHROME_PATH ?? readFileSync(join(root, ".cache/browser"), "utf8").trim();
const browser = await chromium.launch({ executablePath: browserPath, args: [...(process.getuid?.() === 0 ? ["--no-sandbox"] : []), "--disable-gpu", "--disable-background-networking"] });

/** The five places, on the demo episode. */
async function takePlaces() {
  const host = spawn(process.execPath, [cli, "serve", "--port", "0", "--library", join(folder, "library")], { stdio: ["ignore", "pipe", "inherit"] });
  const address = await new Promise((resolve) => {
    let said = "";
    host.stdout.on("data", (data) => {
      said += data;
      const found = /http:\/\/\S+/.exec(said);
      if (found) resolve(found[0]);
    });
  });
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, locale: "en-GB", timezoneId: "UTC" });
  await page.goto(address);
  await page.getByRole("button", { name: "Look at the demo episode" }).click();
  for (const place of ["Write", "Train", "Shoot", "Speak", "Publish"]) {
    await page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: new RegExp(`^${place}`) }).click();
    await page.waitForTimeout(1500);
    await page.screenshot({ path: join(here, `${place.toLowerCase()}.png`) });
  }
  await page.close();
  host.kill();
}

/** Draws pages of a PDF side by side with the general-purpose reader and takes their picture. */
async function takePaper(name, bytes, pages) {
  const page = await browser.newPage({ viewport: { width: 1400, height: 1000 } });
  const serve = { "/": ["text/html", Buffer.from("<body style='margin:0;padding:16px;width:max-content;background:#e9ecec;display:flex;gap:16px'></body>")], "/pdf.mjs": ["text/javascript", readFileSync(join(root, "node_modules/pdfjs-dist/build/pdf.min.mjs"))], "/worker.mjs": ["text/javascript", readFileSync(join(root, "node_modules/pdfjs-dist/build/pdf.worker.min.mjs"))], "/paper.pdf": ["application/pdf", bytes] };
  await page.route("http://paper.invalid/**", (route) => {
    const [contentType, body] = serve[new URL(route.request().url()).pathname] ?? ["text/plain", Buffer.from("")];
    return route.fulfill({ contentType, body });
  });
  await page.goto("http://paper.invalid/");
  await page.evaluate(async (numbers) => {
    const pdfjs = await import("http://paper.invalid/pdf.mjs");
    pdfjs.GlobalWorkerOptions.workerSrc = "http://paper.invalid/worker.mjs";
    const paper = await pdfjs.getDocument("http://paper.invalid/paper.pdf").promise;
    for (const number of numbers) {
      const sheet = await paper.getPage(number);
      const viewport = sheet.getViewport({ scale: 620 / sheet.getViewport({ scale: 1 }).width });
      const canvas = Object.assign(document.createElement("canvas"), { width: viewport.width, height: viewport.height });
      document.body.append(canvas);
      await sheet.render({ canvas, viewport }).promise;
    }
  }, pages);
  await page.locator("body").screenshot({ path: join(here, `${name}.png`) });
  await page.close();
}

await takePlaces();
const demo = join(folder, "demo.episode.json");
writeFileSync(demo, execFileSync(process.execPath, [cli, "demo"]));
execFileSync(process.execPath, [cli, "export", demo, "--to", folder]);
const made = readdirSync(folder);
for (const [name, pages] of [["shot-list", [1, 5]], ["voiceover", [1, 2]], ["handout", [1, 2]]]) {
  const file = made.find((each) => each.endsWith(`${name}.pdf`));
  if (!file) throw new Error(`take: no ${name}.pdf was written`);
  await takePaper(name, readFileSync(join(folder, file)), pages);
}
await browser.close();
console.log(`Pictures are in ${here}`);
