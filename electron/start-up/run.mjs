import { spawn } from "node:child_process";

/**
 * Runs a program to its end and collects what it prints, standard output and errors in the order they came.
 * @returns exit code, or null when it could not be started or was stopped by `timeoutMs`
 */
export function run(command, args, { cwd, env = process.env, timeoutMs = 0 } = {}) {
  return new Promise((resolve) => {
    // npm and npx are scripts on Windows, which only a shell starts; the arguments here are our own, never a person's.
    const shell = process.platform === "win32" && /^np[mx]$/.test(command);
    const child = spawn(command, args, { cwd, env, shell, stdio: ["ignore", "pipe", "pipe"] });
    let output = "";
    const timer = timeoutMs > 0 ? setTimeout(() => child.kill(), timeoutMs) : null;
    child.stdout.on("data", (chunk) => (output += chunk));
    child.stderr.on("data", (chunk) => (output += chunk));
    const end = (code) => {
      if (timer !== null) clearTimeout(timer);
      resolve({ code, output });
    };
    child.on("error", (error) => {
      output += String(error);
      end(null);
    });
    child.on("close", end);
  });
}

/** Runs a script of an installed package with this Node. */
export const runScript = (script, args, options) => run(process.execPath, [script, ...args], options);
