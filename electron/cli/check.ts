import { dirname } from "node:path";
import { checkEpisode, RULES, SUBJECTS, type Finding, type Moment, type Rule } from "../../shared/checks";
import { episodeClocks } from "../../shared/clocks";
import { blockName, blockNumber, countingIds, findBlock, type Episode } from "../../shared/episode";
import { ownPaceIn } from "../workspace/speaker";
import { readArgument } from "./read-argument";
import { CommandFailed, type ExitCode, type Terminal } from "./terminal";
import { count } from "./words";

const MOMENTS: readonly Moment[] = ["before filming", "before speaking", "before publishing"];

/** "7. Anti-rotation press: "; most sentences begin with the block's name, and it is not said twice. */
function whereOf(episode: Episode, finding: Finding): string {
  const block = finding.block === null ? null : findBlock(episode, finding.block);
  if (!block) return "";
  const name = blockName(block);
  return `${blockNumber(episode, block.id)}. ${finding.message.startsWith(name) ? "" : `${name}: `}`;
}

/** The line a finding stands in, as it is typed; empty when it is about a whole block or the episode. */
function lineOf(episode: Episode, finding: Finding): string {
  const block = finding.block === null ? null : findBlock(episode, finding.block);
  const line = block?.lines.find(({ id }) => id === finding.line);
  if (line) return `${line.kind}: ${line.text}`;
  const set = block?.sets.find(({ id }) => id === finding.line);
  return set ? `${set.role === "working" ? "sets" : set.role}: ${set.text}` : "";
}

const sourceOf = ({ source }: Finding): string => (source.at === undefined ? source.title : `${source.title}, ${source.at}`);

/** Findings in sentences, grouped by the moment they matter; waived ones apart, at the end. */
export function describeFindings(episode: Episode, findings: readonly Finding[]): string {
  const open = findings.filter((finding) => finding.waiver === null);
  const waived = findings.filter((finding) => finding.waiver !== null);
  const lines: string[] = [];
  for (const moment of MOMENTS) {
    const here = open.filter((finding) => finding.moment === moment);
    if (here.length === 0) continue;
    lines.push(`${moment.charAt(0).toUpperCase()}${moment.slice(1)}`);
    for (const finding of here) {
      const line = lineOf(episode, finding);
      lines.push(`  ${finding.level}: ${whereOf(episode, finding)}${finding.message}`, ...(line === "" ? [] : [`      at ${line}`]), `      ${finding.rule} (${sourceOf(finding)})`);
    }
    lines.push("");
  }
  if (waived.length > 0) {
    lines.push("Waived");
    for (const finding of waived) lines.push(`  ${finding.level}: ${whereOf(episode, finding)}${finding.message}`, `      because: ${finding.waiver?.reason ?? ""}`);
    lines.push("");
  }
  const of = (level: Finding["level"]): number => open.filter((finding) => finding.level === level).length;
  lines.push(open.length === 0 ? "Nothing found." : `${count(open.length, "finding")}: ${of("stop")} stop, ${of("fix")} fix, ${of("consider")} consider.`);
  return `${lines.join("\n")}\n`;
}

/** What one rule asks for, why, and where that comes from. */
function explain({ meta }: Rule): string {
  const source = meta.source.at === undefined ? meta.source.title : `${meta.source.title}, ${meta.source.at}`;
  const limits = Object.entries(meta.defaults).map(([name, value]) => `${name} ${String(value)}`).join(", ");
  return [
    `${meta.id} (${meta.level}, ${meta.moment}, version ${meta.version})`, `  ${meta.summary}`, `  Why: ${meta.why}`, `  Source: ${source}`,
    ...(limits === "" ? [] : [`  Limits: ${limits}`]),
    ...Object.values(meta.messages).map((message) => `  Says: ${message}`),
  ].join("\n");
}

/** Every rule in a line, by subject. */
export async function listRules(terminal: Terminal): Promise<ExitCode> {
  const lines = SUBJECTS.flatMap((subject) => [`${subject}`, ...RULES.filter(({ meta }) => meta.subject === subject).map(({ meta }) => `  ${meta.id} (${meta.level}): ${meta.summary}`)]);
  await terminal.out(`${lines.join("\n")}\n${RULES.length} rules.\n`);
  return 0;
}

/** One rule in full. @throws {CommandFailed} when there is no rule of that name */
export async function explainRule(terminal: Terminal, id: string): Promise<ExitCode> {
  const rule = RULES.find(({ meta }) => meta.id === id);
  if (!rule) throw new CommandFailed(`There is no rule "${id}". repwright check --list names them all.`);
  await terminal.out(`${explain(rule)}\n`);
  return 0;
}

/** Runs every check, the words counted at the pace of the folder the episode lies in. @returns 1 when a stop stands that nobody waived */
export async function check(terminal: Terminal, path: string, options: { readonly json?: boolean }): Promise<ExitCode> {
  const episode = await readArgument(path);
  const { pace, sentence, isUsual } = await ownPaceIn(dirname(path));
  // Counting ids, so that the remedies of one file are the same each time.
  const findings = checkEpisode({ episode, clocks: episodeClocks(episode, pace), now: terminal.now().toISOString(), newId: countingIds("new-") });
  await terminal.out(options.json ? `${JSON.stringify(findings, null, 2)}\n` : `${describeFindings(episode, findings)}${sentence}\n`);
  if (options.json && !isUsual) terminal.err(`${sentence}\n`);
  return findings.some((finding) => finding.level === "stop" && finding.waiver === null) ? 1 : 0;
}
