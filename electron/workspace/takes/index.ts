import { randomUUID } from "node:crypto";
import { constants } from "node:fs";
import { lstat, open, realpath } from "node:fs/promises";
import { join } from "node:path";
import type { Answer, Request, Take } from "../../../shared/bridge";
import type { Disk } from "../atomic-write";
import { isInside, placeInLibrary } from "../library-paths";
import { makeFolder } from "../make-folder";
import { diskProblem, errorCode, problem, type Problem } from "../sentences";
import { copyTakes } from "./copy-takes";
import { appendSamples, makeSoundFile, soundSeconds } from "./sound-file";
import { countsAtItsEnd, countsAtOnce, readTakes, withTake, writeTakes } from "./take-list";
import { takeStem, underFreeName } from "./take-name";

const TAKES_FOLDER = "takes";
/** What the names of episode files end in. */
export const STEM_END = ".episode.json";

/**
 * The takes of the library's episodes: plain WAV files and one list, in a folder of the episode's name beside it.
 * Nothing here removes or replaces a recording. One operation at a time, so a list is never written over.
 */
export class Takes {
  #queue: Promise<unknown> = Promise.resolve();
  /** Episode files whose takes are not all there yet, with the file they are to be copied from. */
  readonly #uncopied = new Map<string, string>();

  constructor(
    readonly library: string,
    private readonly disk: Disk,
    private readonly now: () => Date,
  ) {}

  list({ file }: Request<"takes:list">): Promise<Answer<"takes:list">> {
    return this.#inTurn("The takes could not be listed", async () => {
      const from = this.#uncopied.get(file);
      const copied = from === undefined ? { ok: true as const } : await this.#copy(from, file);
      if (!copied.ok) return copied;
      const folder = await this.#folder(file);
      if (!folder.ok) return folder;
      const read = await readTakes(folder.path);
      return read.ok ? { ok: true, folder: folder.path, takes: await this.#measured(folder.path, read.takes) } : read;
    });
  }

  /**
   * The episode of one file lies in another one from now on: its takes are copied along, those of the first stay.
   * What hinders that is told, and tried again, whenever the takes of the other one are asked for.
   */
  async carryOver(from: string, to: string): Promise<void> {
    if (from === to) return;
    await this.#inTurn("The takes were not copied", () => {
      this.#uncopied.set(to, from);
      return this.#copy(from, to);
    });
  }

  begin({ rate, ...of }: Request<"takes:begin">): Promise<Answer<"takes:begin">> {
    return this.#inTurn("The take was not begun", async () => {
      const open = await this.#openList(of.file);
      if (!open.ok) return open;
      const sound = await underFreeName(takeStem(of.name), (name) => makeSoundFile(join(open.folder, name), rate));
      const take = { ...this.#newTake(of), file: sound, seconds: null, recorded: 0, chosen: countsAtOnce(open.takes, of.line) };
      await writeTakes(open.folder, withTake(open.takes, take), this.disk);
      return { ok: true, take };
    });
  }

  append({ file, take: id, after, samples }: Request<"takes:append">): Promise<Answer<"takes:append">> {
    return this.#inTurn("A piece of the recording was not written", async () => {
      const found = await this.#soundOf(file, id);
      if (!found.ok) return found;
      const bytes = Buffer.from(samples, "base64");
      // Half a sample would shift every sample after it.
      if (bytes.length % 2 !== 0) return problem("bad-samples", "A piece of the recording was not written: it ends in half a sample.");
      return { ok: true, samples: await appendSamples(found.path, after, bytes) };
    });
  }

  end({ file, take: id, seconds }: Request<"takes:end">): Promise<Answer<"takes:end">> {
    return this.#inTurn("The take was recorded, but its length was not noted", async () => {
      const found = await this.#soundOf(file, id);
      if (!found.ok) return found;
      const ended = { ...found.take, seconds, recorded: (await soundSeconds(found.path)) ?? found.take.recorded };
      const take = { ...ended, chosen: countsAtItsEnd(found.takes, ended) };
      await writeTakes(found.folder, withTake(found.takes, take), this.disk);
      return { ok: true, take };
    });
  }

  tap({ seconds, ...of }: Request<"takes:tap">): Promise<Answer<"takes:tap">> {
    return this.#inTurn("The take was not noted", async () => {
      const open = await this.#openList(of.file);
      if (!open.ok) return open;
      const take = { ...this.#newTake(of), file: null, seconds, recorded: null, chosen: true };
      await writeTakes(open.folder, withTake(open.takes, take), this.disk);
      return { ok: true, take };
    });
  }

  choose({ file, take: id }: Request<"takes:choose">): Promise<Answer<"takes:choose">> {
    return this.#inTurn("The choice was not noted", async () => {
      const found = await this.#take(file, id);
      if (!found.ok) return found;
      const takes = withTake(found.takes, { ...found.take, chosen: true });
      await writeTakes(found.folder, takes, this.disk);
      return { ok: true, folder: found.folder, takes: await this.#measured(found.folder, takes) };
    });
  }

  sound({ file, take: id }: Request<"takes:sound">): Promise<Answer<"takes:sound">> {
    return this.#inTurn("The take could not be read", async () => {
      const found = await this.#soundOf(file, id);
      if (!found.ok) return found;
      const handle = await open(found.path, constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0));
      try {
        return { ok: true, base64: await handle.readFile("base64") };
      } finally {
        await handle.close();
      }
    });
  }

  #newTake({ line, text, planned }: Request<"takes:tap"> | Omit<Request<"takes:begin">, "rate">): Omit<Take, "file" | "seconds" | "recorded" | "chosen"> {
    return { id: randomUUID(), line, text, planned, at: this.now().toISOString() };
  }

  async #copy(from: string, to: string): Promise<{ ok: true } | Problem> {
    const [source, target] = [await this.#folder(from), await this.#folder(to)];
    if (!source.ok) return source;
    if (!target.ok) return target;
    const what = `The takes of "${from}" were not copied to "${to}" and are still in ${source.path}`;
    try {
      const copied = await copyTakes(source.path, target.path, this.disk);
      if (!copied.ok) return problem(copied.code, `${what}. ${copied.message}`);
      this.#uncopied.delete(to);
      return copied;
    } catch (error) {
      return diskProblem(error, what);
    }
  }

  /** Takes that were broken off are as long as their sound. */
  #measured(folder: string, takes: readonly Take[]): Promise<Take[]> {
    return Promise.all(takes.map(async (take) => (take.file === null || take.seconds !== null ? take : { ...take, recorded: (await soundSeconds(join(folder, take.file))) ?? take.recorded })));
  }

  /** Where an episode's takes lie; the folder need not be there. One that leads out of the library is refused. */
  async #folder(file: string): Promise<{ ok: true; path: string } | Problem> {
    const place = await placeInLibrary(this.library, file);
    if (!place.ok) return place;
    const path = join(this.library, TAKES_FOLDER, file.slice(0, -STEM_END.length));
    try {
      if (isInside(await realpath(this.library), await realpath(path))) return { ok: true, path };
      return problem("outside", `The folder ${path} is a link to a place outside the library; it is left alone.`);
    } catch (error) {
      if (errorCode(error) !== "ENOENT") throw error;
      const dangling = await lstat(path).then(() => true, () => false);
      const base = await realpath(join(this.library, TAKES_FOLDER)).catch(() => null);
      const leadsOut = dangling || (base !== null && !isInside(await realpath(this.library), base));
      return leadsOut ? problem("outside", `The folder ${path} is a link to a place outside the library; it is left alone.`) : { ok: true, path };
    }
  }

  /** The folder, made when missing, and what is noted in it. */
  async #openList(file: string): Promise<{ ok: true; folder: string; takes: Take[] } | Problem> {
    const folder = await this.#folder(file);
    if (!folder.ok) return folder;
    await makeFolder(folder.path, this.disk);
    const read = await readTakes(folder.path);
    return read.ok ? { ok: true, folder: folder.path, takes: read.takes } : read;
  }

  async #take(file: string, id: string): Promise<{ ok: true; folder: string; takes: Take[]; take: Take } | Problem> {
    const open = await this.#openList(file);
    if (!open.ok) return open;
    const take = open.takes.find((one) => one.id === id);
    return take ? { ...open, take } : problem("missing", "There is no such take of this episode.");
  }

  async #soundOf(file: string, id: string): Promise<{ ok: true; folder: string; takes: Take[]; take: Take; path: string } | Problem> {
    const found = await this.#take(file, id);
    if (!found.ok) return found;
    return found.take.file === null ? problem("missing", "This take was tapped; it has no sound.") : { ...found, path: join(found.folder, found.take.file) };
  }

  /** What the system refuses comes back as a sentence that begins with `what`. */
  #inTurn<T>(what: string, operation: () => Promise<T | Problem>): Promise<T | Problem> {
    const safely = (): Promise<T | Problem> => operation().catch((error: unknown) => (errorCode(error) === null && error instanceof Error ? problem("failed", `${what}: ${error.message}.`) : diskProblem(error, what)));
    const turn = this.#queue.then(safely, safely);
    this.#queue = turn;
    return turn;
  }
}
