/** Counts how well a reader of coaching text agrees with people's labels. Pure: lines and answers in, tables out. */
export interface LabelledLine {
  readonly text: string;
  readonly labels: readonly string[];
  readonly difficulty: string;
}

/** Reads one line and names what is wrong with it. */
export type Reader<Line extends LabelledLine> = (line: Line) => readonly string[];

/** Right: named and meant. Missed: meant, not named. Wrong: named, not meant. */
export interface Tally {
  readonly right: number;
  readonly missed: number;
  readonly wrong: number;
}

export interface Judged<Line extends LabelledLine> {
  readonly line: Line;
  readonly found: readonly string[];
}

export interface CueScore<Line extends LabelledLine> {
  readonly lines: number;
  /** All lines but the disputed ones, which are counted by themselves. */
  readonly all: Tally;
  readonly disputed: Tally;
  readonly byLabel: ReadonlyMap<string, Tally>;
  readonly byDifficulty: ReadonlyMap<string, Tally>;
  readonly acceptable: { readonly lines: number; readonly flagged: number };
  readonly misses: readonly Judged<Line>[];
  readonly falseAlarms: readonly Judged<Line>[];
}

const NONE: Tally = { right: 0, missed: 0, wrong: 0 };
const plus = (a: Tally, b: Tally): Tally => ({ right: a.right + b.right, missed: a.missed + b.missed, wrong: a.wrong + b.wrong });

export const precision = ({ right, wrong }: Tally): number => (right + wrong === 0 ? 1 : right / (right + wrong));
export const recall = ({ right, missed }: Tally): number => (right + missed === 0 ? 1 : right / (right + missed));

function tallies(meant: readonly string[], found: readonly string[]): [string, Tally][] {
  return [...new Set([...meant, ...found])].map((label) => {
    const isMeant = meant.includes(label);
    const isFound = found.includes(label);
    return [label, { right: isMeant && isFound ? 1 : 0, missed: isMeant && !isFound ? 1 : 0, wrong: !isMeant ? 1 : 0 }];
  });
}

export function scoreCues<Line extends LabelledLine>(lines: readonly Line[], read: Reader<Line>): CueScore<Line> {
  const byLabel = new Map<string, Tally>();
  const byDifficulty = new Map<string, Tally>();
  const misses: Judged<Line>[] = [];
  const falseAlarms: Judged<Line>[] = [];
  let all = NONE;
  let disputed = NONE;
  let acceptable = 0;
  let flagged = 0;
  for (const line of lines) {
    const found = [...new Set(read(line))];
    const each = tallies(line.labels, found);
    const sum = each.reduce((total, [, tally]) => plus(total, tally), NONE);
    byDifficulty.set(line.difficulty, plus(byDifficulty.get(line.difficulty) ?? NONE, sum));
    if (sum.missed > 0) misses.push({ line, found });
    if (sum.wrong > 0) falseAlarms.push({ line, found });
    if (line.difficulty === "disputed") {
      disputed = plus(disputed, sum);
      continue;
    }
    all = plus(all, sum);
    for (const [label, tally] of each) byLabel.set(label, plus(byLabel.get(label) ?? NONE, tally));
    if (line.labels.length === 0) {
      acceptable += 1;
      if (found.length > 0) flagged += 1;
    }
  }
  return { lines: lines.length, all, disputed, byLabel, byDifficulty, acceptable: { lines: acceptable, flagged }, misses, falseAlarms };
}

const percent = (share: number): string => `${(share * 100).toFixed(1).padStart(5)} %`;
const row = (name: string, tally: Tally): string =>
  `${name.padEnd(22)} precision ${percent(precision(tally))}  recall ${percent(recall(tally))}  right ${String(tally.right).padStart(4)}  missed ${String(tally.missed).padStart(4)}  wrong ${String(tally.wrong).padStart(3)}`;

/** The figures as lines of text, no words of the corpus among them. */
export function scoreTable<Line extends LabelledLine>(name: string, score: CueScore<Line>): string {
  const { lines, flagged } = score.acceptable;
  return [
    `${name}: ${score.lines} lines; acceptable ones flagged ${flagged} of ${lines} (${percent(lines === 0 ? 0 : flagged / lines).trim()})`,
    row("all but disputed", score.all),
    ...[...score.byDifficulty].sort().map(([difficulty, tally]) => row(`  ${difficulty}`, tally)),
    ...[...score.byLabel].sort().map(([label, tally]) => row(label, tally)),
  ].join("\n");
}

/** One line for a miss or a false alarm, for people. */
export const judgedLine = <Line extends LabelledLine & { readonly family?: string; readonly audience?: string }>({ line, found }: Judged<Line>): string =>
  `${line.difficulty} ${line.family ?? ""}/${line.audience ?? ""} meant [${line.labels.join(", ")}] said [${found.join(", ")}]: ${line.text}`;
