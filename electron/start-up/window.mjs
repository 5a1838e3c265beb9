/** Whether something can be shown: always, but on Linux without a display server. */
export function hasDisplay(platform, env) {
  return platform !== "linux" || Boolean(env.DISPLAY || env.WAYLAND_DISPLAY);
}

/**
 * Which program shows the address, and how it is called. Null when there is nothing to show it on.
 * A Chromium opens a window without address bar, with a profile of its own, so it neither meets a
 * running browser nor leaves anything in it. Root is refused by Chromium's sandbox and goes without.
 */
export function windowCommand({ address, browser, profile, platform, env, isRoot }) {
  if (!hasDisplay(platform, env)) return null;
  if (browser !== null) {
    const args = [`--app=${address}`, `--user-data-dir=${profile}`, "--no-first-run", "--no-default-browser-check", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--window-size=1280,860"];
    return { kind: "app", command: browser, args: isRoot ? [...args, "--no-sandbox", "--test-type"] : args };
  }
  if (platform === "darwin") return { kind: "default", command: "open", args: [address] };
  if (platform === "win32") return { kind: "default", command: "cmd", args: ["/c", "start", "", address] };
  return { kind: "default", command: "xdg-open", args: [address] };
}
