import { protocol } from "electron";
import { PAGE_HEADERS } from "./page-policy";
import { readStatic } from "./static-files";

const APP_SCHEME = "app";
const APP_HOST = "repwright";
export const APP_PAGE = `${APP_SCHEME}://${APP_HOST}/index.html`;

/** Whether an address is a page of this app. */
export function isAppAddress(address: string): boolean {
  if (!URL.canParse(address)) return false;
  const url = new URL(address);
  return url.protocol === `${APP_SCHEME}:` && url.host === APP_HOST && url.username === "" && url.password === "";
}

/**
 * Makes app:// a proper origin, with storage, modules and workers. A file:// page would share its
 * origin with every file of the computer. Must run before the app is ready.
 */
export function registerAppScheme(): void {
  protocol.registerSchemesAsPrivileged([{ scheme: APP_SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true } }]);
}

/** Answers app:// from the folder of built screens, with the page policy as headers. */
export function serveApp(renderer: string): void {
  protocol.handle(APP_SCHEME, async (request) => {
    const refuse = (status: number): Response => new Response(null, { status, headers: PAGE_HEADERS });
    if (request.method !== "GET" || !isAppAddress(request.url)) return refuse(403);
    const file = await readStatic(renderer, new URL(request.url).pathname);
    return file ? new Response(file.bytes, { headers: { ...PAGE_HEADERS, "content-type": file.type } }) : refuse(404);
  });
}
