import type { Episode } from "../../shared/episode";
import { readEpisodeFile } from "../workspace/read-file";
import { CommandFailed } from "./terminal";

/** The episode of a file named on the command line, any path. @throws CommandFailed with the place of what is wrong */
export async function readArgument(path: string): Promise<Episode> {
  const read = await readEpisodeFile(path, path);
  if (!read.ok) throw new CommandFailed(read.message);
  return read.episode;
}
