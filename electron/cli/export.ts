import { basename, dirname, join } from "node:path";
import { DOCUMENT_IDS, type DocumentId } from "../../shared/exports";
import { readFonts } from "../workspace/fonts";
import { nodeDisk } from "../workspace/atomic-write";
import { pageFor } from "../workspace/phone-page";
import { exportOptions, writePapers, type PaperChoice } from "../workspace/papers";
import { speakerOf } from "../workspace/speaker";
import { Takes } from "../workspace/takes";
import { placesIn } from "../places";
import { readArgument } from "./read-argument";
import { CommandFailed, type ExitCode, type Terminal } from "./terminal";

/** "shot-list,handout.pdf" as documents: a full name means one file, a short one every format of that document. */
export function chosenDocuments(only: string | undefined): DocumentId[] {
  if (only === undefined) return [...DOCUMENT_IDS];
  const wanted = only.split(",").map((name) => name.trim()).filter((name) => name !== "");
  const chosen = new Set<DocumentId>();
  for (const name of wanted) {
    const matches = DOCUMENT_IDS.filter((id) => id === name || id.slice(0, id.lastIndexOf(".")) === name);
    if (matches.length === 0) throw new CommandFailed(`There is no document "${name}"; there are ${DOCUMENT_IDS.join(", ")}.`);
    matches.forEach((id) => chosen.add(id));
  }
  if (chosen.size === 0) throw new CommandFailed(`Name at least one document after --only: ${DOCUMENT_IDS.join(", ")}.`);
  return DOCUMENT_IDS.filter((id) => chosen.has(id));
}

export interface ExportFlags {
  readonly to: string;
  readonly only?: string;
  readonly paper: PaperChoice["paper"];
  readonly units?: PaperChoice["units"];
}

/**
 * Writes the documents of an episode and prints the path of each; what was left out, what was timed by takes
 * and whose pace was counted at goes to stderr. The folder the episode lies in is its library.
 */
export async function exportPapers(terminal: Terminal, path: string, flags: ExportFlags): Promise<ExitCode> {
  const documents = chosenDocuments(flags.only);
  const episode = await readArgument(path);
  const choice = { paper: flags.paper, units: flags.units ?? episode.session.units };
  const places = placesIn(terminal.dist);
  const speaker = await speakerOf(new Takes(dirname(path), nodeDisk, terminal.now), basename(path), episode, documents);
  const options = exportOptions(episode, choice, { fonts: await readFonts(places.fonts), page: await pageFor(documents, places.phoneSheet) }, speaker);
  const written = await writePapers({ episode, documents, options, folder: flags.to, notes: [...speaker.notes, speaker.sentence] });
  if (!written.ok) throw new CommandFailed(written.message);
  for (const note of written.notes) terminal.err(`${note}\n`);
  await terminal.out(written.files.map((file) => `${join(flags.to, file)}\n`).join(""));
  return 0;
}
