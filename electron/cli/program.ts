import { Command, CommanderError, InvalidArgumentError, Option } from "commander";
import { VERSION } from "../version";
import type { ExportFlags } from "./export";
import type { LineCommand } from "./json-lines";
import { CommandFailed, type ExitCode, type Terminal } from "./terminal";

function portNumber(text: string): number {
  const port = Number(text);
  if (!/^\d{1,5}$/.test(text) || port > 65_535) throw new InvalidArgumentError("Expected a port from 0 to 65535; 0 takes a free one.");
  return port;
}

/** The commands; `done` receives the exit code of the one that ran. Each loads its part when it runs, so that a short one starts at once. */
function programFor(terminal: Terminal, done: (code: ExitCode) => void): Command {
  const program = new Command("repwright");
  const lines = async <T extends { readonly id: string | number | null }>(command: LineCommand<T>): Promise<ExitCode> => (await import("./json-lines")).answerLines(terminal, command);
  program
    .description("Plan, film, narrate and publish a workout episode that strangers can follow safely.")
    .version(VERSION)
    .exitOverride()
    .configureOutput({ writeOut: (text) => void terminal.out(text), writeErr: (text) => terminal.err(text) })
    .showHelpAfterError("(repwright --help lists the commands)");

  program.command("check").argument("[episode]", "an .episode.json file").option("--json", "findings as a JSON array")
    .option("--list", "every rule in a line").option("--explain <rule>", "one rule: what it asks for, why, and its source")
    .description("run every check; exit code 1 when a stop stands, 2 when the file cannot be read")
    .action(async (path: string | undefined, options: { json?: boolean; list?: boolean; explain?: string }) => {
      const checks = await import("./check");
      if (options.list) return done(await checks.listRules(terminal));
      if (options.explain !== undefined) return done(await checks.explainRule(terminal, options.explain));
      if (path === undefined) throw new CommandFailed("check needs an episode file, or --list, or --explain RULE.");
      return done(await checks.check(terminal, path, options));
    });

  program.command("export").argument("<episode>", "an .episode.json file").requiredOption("--to <folder>", "where the documents go; made when missing")
    .option("--only <names>", "documents by name, with commas: shot-list, voiceover, cue-card, captions, handout, or one file such as captions.vtt")
    .addOption(new Option("--paper <size>", "paper size").choices(["a4", "letter"]).default("a4"))
    .addOption(new Option("--units <unit>", "show loads in this unit (default: the session's)").choices(["kg", "lb"]))
    .description("write the shot list, the voiceover script and its cue card, the captions and the handout")
    .action(async (path: string, flags: ExportFlags) => done(await (await import("./export")).exportPapers(terminal, path, flags)));

  program.command("time").argument("<episode>", "an .episode.json file").option("--json", "seconds as JSON")
    .description("the gym clock and the screen clock, per block")
    .action(async (path: string, options: { json?: boolean }) => done(await (await import("./time")).time(terminal, path, options)));

  program.command("cues").description('read coaching text: {"id","text","family","slot","audience","exercise"} a line in, {"id","labels"} a line out')
    .action(async () => done(await lines((await import("./cues")).cuesCommand)));
  program.command("sets").description('read set lines: {"id","text"} a line in, {"id","parse"} a line out')
    .action(async () => done(await lines((await import("./sets")).setsCommand)));
  program.command("say").argument("[words]", "with --recording: what was read aloud, an .episode.json file or a text file")
    .option("--recording <file>", "a WAV file of the words being read: prints the pace learned from it").option("--json", "the same as JSON")
    .description('time spoken words: {"id","text"} a line in, {"id","seconds","words","syllables"} a line out; or learn a pace from a recording')
    .action(async (words: string | undefined, { recording, json }: { recording?: string; json?: boolean }) => {
      if (recording === undefined) {
        if (words !== undefined || json) throw new CommandFailed("say takes words by name, and --json, only with --recording FILE; without it, it reads records from standard input.");
        return done(await lines((await import("./say")).sayCommand));
      }
      if (words === undefined) throw new CommandFailed("say --recording needs the words that were read: an episode or a text file.");
      return done(await (await import("./say-recording")).sayRecording(terminal, words, recording, { ...(json && { json }) }));
    });

  program.command("coverage").description("plan the cameras: a problem as JSON in, which mark films which set out")
    .action(async () => done(await (await import("./coverage")).coverage(terminal)));

  program.command("import").argument("<file>", "captions (.vtt, .srt), lines with times, a transcript or notes").option("--to <file>", "write the episode here instead of printing it; a folder is fine too")
    .option("--json", "the report as JSON").description("the draft of an episode from old captions or notes, and what was not understood")
    .action(async (path: string, options: { to?: string; json?: boolean }) => done(await (await import("./import")).importFile(terminal, path, options)));

  program.command("demo").option("--to <file>", "write it here instead of printing it").description("the demo episode")
    .action(async (options: { to?: string }) => done(await (await import("./demo")).demo(terminal, options)));

  program.command("serve").option("--port <number>", "default: a free one", portNumber).option("--library <folder>", "folder of episodes")
    .description("the screens for a browser on this computer; prints the address to open")
    .action(async (options: { port?: number; library?: string }) => done(await (await import("./serve-command")).serveCommand(terminal, options)));
  return program;
}

/**
 * Runs one command line.
 * @param args - without node and script name
 * @returns 0 done, 1 done and a stop stands, 2 could not be done; then one sentence has gone to stderr
 */
export async function run(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  let code: ExitCode = 0;
  const program = programFor(terminal, (answered) => (code = answered));
  try {
    await program.parseAsync([...args], { from: "user" });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (!(error instanceof CommandFailed)) throw error;
    terminal.err(`${error.message}\n`);
    return 2;
  }
}
