import { $getRoot, $getState, type LexicalNode, type NodeKey } from "lexical";
import { MAX_TEXT, type Alternate, type Block, type Episode, type Line, type SetLine } from "../../shared/episode";
import { $isAlternateNode } from "./alternate/alternate-node";
import { $blockHead, $isBlockNode, type BlockNode } from "./block/block-node";
import { $isLineNode } from "./line/line-node";
import { $isSetLineNode } from "./set-line/set-line-node";
import { headState, idState, lineKindState, setRoleState } from "./states";

type Item = Line | SetLine | Alternate;
interface KnownItem { node: LexicalNode; text: string; item: Item }
interface KnownBlock { node: BlockNode; title: string; items: readonly Item[]; block: Block }

/** What the last projection made, so that what did not change is handed out again, the same object. */
export interface ProjectionMemory {
  items: Map<NodeKey, KnownItem>;
  blocks: Map<NodeKey, KnownBlock>;
  episode: Episode | null;
}

export const newMemory = (): ProjectionMemory => ({ items: new Map(), blocks: new Map(), episode: null });

/** Characters a file may not hold in a line become spaces. */
 
const UNPRINTABLE = /[\u0000-\u001f\u007f\u2028\u2029]/g;
const lineText = (node: LexicalNode): string => node.getTextContent().replace(UNPRINTABLE, " ").slice(0, MAX_TEXT);

function $projectItem(node: LexicalNode): Item | null {
  const id = $getState(node, idState);
  if ($isLineNode(node)) return { id, kind: $getState(node, lineKindState), text: lineText(node) };
  if ($isSetLineNode(node)) return { id, role: $getState(node, setRoleState), text: lineText(node) };
  if ($isAlternateNode(node)) return { id, text: lineText(node) };
  return null;
}

function $item(node: LexicalNode, known: ProjectionMemory, next: ProjectionMemory): Item | null {
  const key = node.getKey();
  const latest = node.getLatest();
  const text = lineText(latest);
  const before = known.items.get(key);
  if (before && before.node === latest && before.text === text) {
    next.items.set(key, before);
    return before.item;
  }
  const item = $projectItem(latest);
  if (item) next.items.set(key, { node: latest, text, item });
  return item;
}

function $block(head: BlockNode, rows: readonly LexicalNode[], known: ProjectionMemory, next: ProjectionMemory): Block {
  const key = head.getKey();
  const latest = head.getLatest();
  const title = lineText(latest).slice(0, 200);
  const items = rows.flatMap((row) => $item(row, known, next) ?? []);
  const before = known.blocks.get(key);
  if (before && before.node === latest && before.title === title && before.items.length === items.length && before.items.every((item, i) => item === items[i])) {
    next.blocks.set(key, before);
    return before.block;
  }
  const facts = $blockHead(latest);
  const block: Block = {
    id: facts.id, kind: facts.kind, title, exercise: facts.exercise, station: facts.station, minutes: facts.minutes, clipSeconds: facts.clipSeconds,
    sets: items.filter((item): item is SetLine => "role" in item),
    lines: items.filter((item): item is Line => "kind" in item),
    alternates: items.filter((item): item is Alternate => !("role" in item) && !("kind" in item)),
    actuals: facts.actuals,
    ...(facts.filming === null ? {} : { filming: facts.filming }),
  };
  next.blocks.set(key, { node: latest, title, items, block });
  return block;
}

/** A lone head without an id is only a place for the caret on an empty page. */
const $isPlaceholder = (head: BlockNode, rows: readonly LexicalNode[]): boolean => $getState(head, idState) === "" && rows.length === 0 && head.getTextContent() === "";

/**
 * The episode the sheet holds. Pure, and incremental: a block whose head and rows are the same nodes as in
 * `known` is the same object again, and so is the whole episode when nothing changed.
 * @returns the episode and the memory for the next call; null before an episode was loaded
 */
export function $projectEpisode(known: ProjectionMemory): { episode: Episode; memory: ProjectionMemory } | null {
  const head = $getState($getRoot(), headState);
  if (!head) return null;
  const next = newMemory();
  const groups: { head: BlockNode; rows: LexicalNode[] }[] = [];
  for (const node of $getRoot().getChildren()) {
    if ($isBlockNode(node)) groups.push({ head: node, rows: [] });
    else groups[groups.length - 1]?.rows.push(node);
  }
  const blocks = groups.filter((group) => !$isPlaceholder(group.head, group.rows)).map((group) => $block(group.head, group.rows, known, next));
  const before = known.episode;
  const { title, ...facts } = head;
  const same = before !== null && before.title === title && before.blocks.length === blocks.length && blocks.every((block, i) => block === before.blocks[i])
    && (Object.keys(facts) as (keyof typeof facts)[]).every((key) => before[key] === facts[key]);
  next.episode = same ? before : { ...facts, title, blocks };
  return { episode: next.episode, memory: next };
}
