import { checkEpisode, type Finding, type Moment } from "../../shared/checks";
import { episodeClocks } from "../../shared/clocks";
import { blockName, blockNumber, countingIds, findBlock, type Episode } from "../../shared/episode";
import { readArgument } from "./read-argument";
import type { ExitCode, Terminal } from "./terminal";
import { count } from "./words";

const MOMENTS: readonly Moment[] = ["before filming", "before speaking", "before publishing"];

function whereOf(episode: Episode, finding: Finding): string {
  const block = finding.block === null ? null : findBlock(episode, finding.block);
  return block ? `${blockNumber(episode, block.id)}. ${blockName(block)}: ` : "";
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
      lines.push(`  ${finding.level}: ${whereOf(episode, finding)}${finding.message}`, `      ${finding.rule} (${sourceOf(finding)})`);
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

/** Runs every check. @returns 1 when a stop stands that nobody waived */
export async function check(terminal: Terminal, path: string, options: { readonly json?: boolean }): Promise<ExitCode> {
  const episode = await readArgument(path);
  // Counting ids, so that the remedies of one file are the same each time.
  const findings = checkEpisode({ episode, clocks: episodeClocks(episode), now: terminal.now().toISOString(), newId: countingIds("new-") });
  await terminal.out(options.json ? `${JSON.stringify(findings, null, 2)}\n` : describeFindings(episode, findings));
  return findings.some((finding) => finding.level === "stop" && finding.waiver === null) ? 1 : 0;
}
