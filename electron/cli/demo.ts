import { demoEpisode, writeEpisode } from "../../shared/episode";
import { writeAtomic } from "../workspace/atomic-write";
import { diskProblem } from "../workspace/sentences";
import { CommandFailed, type ExitCode, type Terminal } from "./terminal";

/** The demo episode as a file, to try the other commands on. */
export async function demo(terminal: Terminal, options: { readonly to?: string }): Promise<ExitCode> {
  const text = writeEpisode(demoEpisode);
  if (options.to === undefined) {
    await terminal.out(text);
    return 0;
  }
  try {
    await writeAtomic(options.to, Buffer.from(text, "utf8"));
  } catch (error) {
    throw new CommandFailed(diskProblem(error, `"${options.to}" was not written`).message);
  }
  await terminal.out(`${options.to}\n`);
  return 0;
}
