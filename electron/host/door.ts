import { randomBytes, timingSafeEqual } from "node:crypto";
import type { IncomingHttpHeaders } from "node:http";

export const newSecret = (): string => randomBytes(32).toString("base64url");

/** Compares in the same time whatever is wrong, so that a guess learns nothing. */
export function sameSecret(given: string | null | undefined, secret: string): boolean {
  const a = Buffer.from(given ?? "", "utf8");
  const b = Buffer.from(secret, "utf8");
  return a.length === b.length && timingSafeEqual(a, b);
}

/** The value of one cookie; null when it was not sent. */
export function cookieValue(header: string | undefined, name: string): string | null {
  for (const pair of (header ?? "").split(";")) {
    const equals = pair.indexOf("=");
    if (equals > 0 && pair.slice(0, equals).trim() === name) return pair.slice(equals + 1).trim();
  }
  return null;
}

/** A refusal with its HTTP status and a sentence. */
export interface Refusal {
  readonly status: number;
  readonly message: string;
}

/** The names this host answers to. A page elsewhere that points its own name at 127.0.0.1 is turned away by this. */
export const hostNames = (port: number): string[] => [`127.0.0.1:${port}`, `localhost:${port}`];

/**
 * Whether a request may come in at all: addressed to this host, and not sent by another site's page.
 * @returns null when it may
 */
export function refuseStranger(headers: IncomingHttpHeaders, port: number, changes: boolean): Refusal | null {
  const names = hostNames(port);
  if (!names.includes(headers.host ?? "")) return { status: 421, message: "This address is not served here." };
  const origins = names.map((name) => `http://${name}`);
  // Browsers send Origin with every POST; a POST without one did not come from our page.
  if ((changes || headers.origin !== undefined) && !origins.includes(headers.origin ?? "")) {
    return { status: 403, message: "Requests from other pages are refused." };
  }
  const site = headers["sec-fetch-site"];
  if (changes && site !== undefined && site !== "same-origin") return { status: 403, message: "Requests from other pages are refused." };
  return null;
}
