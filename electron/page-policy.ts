/**
 * What the page may load and do, in both windows: its own files and nothing else. Styles may be inline
 * because the editor and charts set them on elements; scripts may not.
 * @source W3C Content Security Policy Level 3
 */
export const CONTENT_POLICY = [
  "default-src 'none'",
  // WebAssembly as well: imports multiply numbers with it.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  // A take that was read is listened to from memory.
  "media-src 'self' blob:",
  "connect-src 'self'",
  "worker-src 'self' blob:",
  "frame-ancestors 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** Headers of every answer. */
export const PAGE_HEADERS: Readonly<Record<string, string>> = {
  "content-security-policy": CONTENT_POLICY,
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "permissions-policy": "camera=(), microphone=(self), geolocation=(), usb=(), serial=(), payment=()",
  "cache-control": "no-store",
};
