import type { Block, Episode, Facts, Line, NewId } from "../episode";
import { rangeIn, type Range } from "./ranges";
import type { CheckContext, CheckLevel, Finding, Moment, Remedy, RuleSource } from "./types";

/** What a rule is about; its folder has the same name. */
export const SUBJECTS = ["structure", "dose", "words", "film", "publishing"] as const;
export type Subject = (typeof SUBJECTS)[number];

type Messages = Readonly<Record<string, string>>;
type Options = Readonly<Record<string, number | string | boolean | readonly string[]>>;
/** `{name}` slots of a message text. */
type Slots<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}` ? Name | Slots<Rest> : never;
type DataFor<Text extends string> = [Slots<Text>] extends [never] ? { readonly data?: undefined } : { readonly data: Readonly<Record<Slots<Text>, string | number>> };

/** Everything a rule says about itself; the findings panel, the help text and the meta-tests are built from it. */
export interface RuleMeta<M extends Messages = Messages, O extends Options = Options> {
  readonly id: string;
  /** Raised when a rule changes what it means, so that old waivers ask again. */
  readonly version: number;
  /** Versions of single messages that changed their meaning by themselves; the others keep `version`. */
  readonly versions?: Partial<Readonly<Record<keyof M & string, number>>>;
  readonly subject: Subject;
  readonly level: CheckLevel;
  readonly moment: Moment;
  /** What the rule asks for, one sentence. */
  readonly summary: string;
  /** Why it matters, one or two plain sentences. */
  readonly why: string;
  readonly source: RuleSource;
  /** Ids of rules that name the cause of what this one finds: where both find something at one place, they speak. */
  readonly yieldsTo?: readonly string[];
  /** How far what this rule finds is a cause of other findings: at its own place unless it says the whole block. */
  readonly reach?: "block";
  readonly defaults: O;
  readonly messages: M;
}

/** Where in the episode a report points. `line` is any of the block's lines, set lines or alternates. */
interface Place {
  readonly block?: Block;
  readonly line?: Pick<Line, "id" | "text">;
  /** Characters of the line's text; left out for the whole line. */
  readonly range?: Range;
  /** What is at fault when there is no line to point at: told apart and waived by it. */
  readonly words?: string;
  readonly remedies?: readonly Remedy[];
  /** For the rare rule whose findings differ in weight or moment. */
  readonly level?: CheckLevel;
  readonly moment?: Moment;
  readonly why?: string;
  readonly source?: RuleSource;
}

export type Report<M extends Messages> = (what: Place & { [K in keyof M & string]: { readonly message: K } & DataFor<M[K]> }[keyof M & string]) => void;

/** A finding before the engine has numbered its key and looked for a waiver; `message` key kept for tests. */
export interface RawFinding extends Omit<Finding, "key" | "waiver"> {
  readonly messageKey: string;
}

/** A rule as the engine knows it. */
export interface Rule {
  readonly meta: RuleMeta;
  /** Block rules are not run again on a block that did not change. */
  readonly scope: "episode" | "block";
  /** @param options - overrides of `meta.defaults`, by name */
  inspect(context: CheckContext, options?: Options): RawFinding[];
}

/** What a block rule may look at: the block, the episode's facts, and ids for remedies. */
export interface BlockContext {
  readonly block: Block;
  readonly facts: Facts;
  readonly newId: NewId;
}

type MetaIn<M extends Messages, O extends Options> = Omit<RuleMeta<M, O>, "defaults"> & { readonly defaults?: O };

const fill = (text: string, data: Readonly<Record<string, string | number>> | undefined): string =>
  text.replace(/\{(\w+)\}/g, (slot, name: string) => String(data?.[name] ?? slot));

/** A `report` that turns what a rule says into findings. */
function collector<M extends Messages>(meta: RuleMeta): { found: RawFinding[]; report: Report<M> } {
  const found: RawFinding[] = [];
  const report = (what: Place & { message: string; data?: Readonly<Record<string, string | number>> | undefined }): void => {
    const range = what.line && what.range ? rangeIn(what.line.text, what.range) : null;
    const words = what.words ?? (what.line ? (range ? what.line.text.slice(range.start, range.end) : what.line.text) : "");
    found.push({
      rule: meta.id, ruleVersion: meta.versions?.[what.message] ?? meta.version, level: what.level ?? meta.level, moment: what.moment ?? meta.moment,
      message: fill(meta.messages[what.message] ?? "", what.data), messageKey: what.message,
      why: what.why ?? meta.why, source: what.source ?? meta.source,
      block: what.block?.id ?? null, line: what.line?.id ?? null, range, words, remedies: what.remedies ?? [],
    });
  };
  // The compiler cannot see through the generic union of messages; each member of it is such an object.
  return { found, report: report as unknown as Report<M> };
}

/** A rule that looks at the whole episode and runs each time. `check` is pure and survives any document. */
export function defineRule<const M extends Messages, O extends Options = Options>(rule: {
  meta: MetaIn<M, O>;
  check(context: CheckContext, options: O, report: Report<M>): void;
}): Rule {
  const meta = { ...rule.meta, defaults: rule.meta.defaults ?? ({} as O) };
  return {
    meta, scope: "episode",
    inspect(context, options) {
      const { found, report } = collector<M>(meta);
      rule.check(context, { ...meta.defaults, ...options }, report);
      return found;
    },
  };
}

const sameFacts = (a: Episode, b: Episode): boolean =>
  a.session === b.session && a.audience === b.audience && a.carryOver === b.carryOver && a.partners === b.partners && a.video === b.video && a.series === b.series;

/**
 * A rule that looks at one block at a time. A block that kept its identity, under facts that kept theirs,
 * is not looked at again: its findings (and the ids in their remedies) are remembered per id maker.
 */
export function defineBlockRule<const M extends Messages, O extends Options = Options>(rule: {
  meta: MetaIn<M, O>;
  check(context: BlockContext, options: O, report: Report<M>): void;
}): Rule {
  const meta = { ...rule.meta, defaults: rule.meta.defaults ?? ({} as O) };
  const known = new WeakMap<NewId, WeakMap<Block, { episode: Episode; found: RawFinding[] }>>();
  const look = (block: Block, context: CheckContext, options: O): RawFinding[] => {
    const { found, report } = collector<M>(meta);
    rule.check({ block, facts: context.episode, newId: context.newId }, options, report);
    return found;
  };
  return {
    meta, scope: "block",
    inspect(context, options) {
      if (options) return context.episode.blocks.flatMap((block) => look(block, context, { ...meta.defaults, ...options }));
      const blocks = known.get(context.newId) ?? new WeakMap<Block, { episode: Episode; found: RawFinding[] }>();
      known.set(context.newId, blocks);
      return context.episode.blocks.flatMap((block) => {
        const hit = blocks.get(block);
        if (hit && sameFacts(hit.episode, context.episode)) return hit.found;
        const found = look(block, context, meta.defaults);
        blocks.set(block, { episode: context.episode, found });
        return found;
      });
    },
  };
}
