import { serve } from "../serve";
import { diskProblem } from "../workspace/sentences";
import { CommandFailed, type ExitCode, type Terminal } from "./terminal";

/** Serves the screens on this computer until it is told to end. */
export async function serveCommand(terminal: Terminal, options: { readonly port?: number; readonly library?: string }): Promise<ExitCode> {
  const host = await serve({ dist: terminal.dist, port: options.port, library: options.library }).catch((error: unknown) => {
    const taken = error instanceof Error && "code" in error && error.code === "EADDRINUSE";
    throw new CommandFailed(taken ? `Port ${options.port} is already in use; choose another one.` : diskProblem(error, "The host did not start").message);
  });
  await terminal.out(`${host.address}\n`);
  terminal.err(`Library: ${host.library}. Ctrl+C ends it.\n`);
  await terminal.ended();
  await host.close();
  return 0;
}
