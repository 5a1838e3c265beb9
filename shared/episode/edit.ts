import type { Alternate, Block, Episode, Facts, Line, SetLine } from "./schema";

/**
 * The changes every place and every remedy speaks in. Each names its target by id, so an edit
 * made on an older picture of the episode still finds its line; a target that is gone is left alone.
 * `at` is an index in the list it goes into; null means at the end.
 */
export type Edit =
  | { type: "insert-block"; at: number | null; block: Block }
  | { type: "remove-block"; block: string }
  | { type: "move-block"; block: string; to: number }
  | { type: "set-block"; block: string; fields: Partial<Pick<Block, "kind" | "title" | "exercise" | "station" | "minutes" | "clipSeconds" | "actuals" | "filming">> }
  | { type: "insert-line"; block: string; at: number | null; line: Line }
  | { type: "set-line"; line: string; fields: Partial<Pick<Line, "kind" | "text">> }
  | { type: "remove-line"; line: string }
  | { type: "insert-set"; block: string; at: number | null; set: SetLine }
  | { type: "set-set"; set: string; fields: Partial<Pick<SetLine, "role" | "text">> }
  | { type: "remove-set"; set: string }
  | { type: "insert-alternate"; block: string; at: number | null; alternate: Alternate }
  | { type: "set-title"; title: string }
  | { type: "set-facts"; fields: Partial<Facts> };

const insertAt = <T>(list: readonly T[], at: number | null, item: T): T[] => {
  const index = at === null ? list.length : Math.max(0, Math.min(at, list.length));
  return [...list.slice(0, index), item, ...list.slice(index)];
};

const mapBlocks = (episode: Episode, change: (block: Block) => Block): Episode => {
  const blocks = episode.blocks.map(change);
  return blocks.every((block, i) => block === episode.blocks[i]) ? episode : { ...episode, blocks };
};

const onBlock = (episode: Episode, id: string, change: (block: Block) => Block): Episode =>
  mapBlocks(episode, (block) => (block.id === id ? change(block) : block));

/** Changes the one item with this id; an item list without it keeps its identity. */
const setItem = <T extends { id: string }>(list: T[], id: string, fields: Partial<NoInfer<T>>): T[] =>
  list.some((item) => item.id === id) ? list.map((item) => (item.id === id ? { ...item, ...fields } : item)) : list;

const dropItem = <T extends { id: string }>(list: T[], id: string): T[] =>
  list.some((item) => item.id === id) ? list.filter((item) => item.id !== id) : list;

const withLines = (block: Block, lines: Line[]): Block => (lines === block.lines ? block : { ...block, lines });
const withSets = (block: Block, sets: SetLine[]): Block => (sets === block.sets ? block : { ...block, sets });

function applyEdit(episode: Episode, edit: Edit): Episode {
  switch (edit.type) {
    case "insert-block":
      return { ...episode, blocks: insertAt(episode.blocks, edit.at, edit.block) };
    case "remove-block":
      return episode.blocks.some((b) => b.id === edit.block) ? { ...episode, blocks: episode.blocks.filter((b) => b.id !== edit.block) } : episode;
    case "move-block": {
      const block = episode.blocks.find((b) => b.id === edit.block);
      if (!block) return episode;
      return { ...episode, blocks: insertAt(episode.blocks.filter((b) => b !== block), edit.to, block) };
    }
    case "set-block":
      return onBlock(episode, edit.block, (block) => ({ ...block, ...edit.fields }));
    case "insert-line":
      return onBlock(episode, edit.block, (block) => ({ ...block, lines: insertAt(block.lines, edit.at, edit.line) }));
    case "set-line":
      return mapBlocks(episode, (block) => withLines(block, setItem(block.lines, edit.line, edit.fields)));
    case "remove-line":
      return mapBlocks(episode, (block) => withLines(block, dropItem(block.lines, edit.line)));
    case "insert-set":
      return onBlock(episode, edit.block, (block) => ({ ...block, sets: insertAt(block.sets, edit.at, edit.set) }));
    case "set-set":
      return mapBlocks(episode, (block) => withSets(block, setItem(block.sets, edit.set, edit.fields)));
    case "remove-set":
      return mapBlocks(episode, (block) => withSets(block, dropItem(block.sets, edit.set)));
    case "insert-alternate":
      return onBlock(episode, edit.block, (block) => ({ ...block, alternates: insertAt(block.alternates, edit.at, edit.alternate) }));
    case "set-title":
      return { ...episode, title: edit.title };
    case "set-facts":
      return { ...episode, ...edit.fields };
  }
}

/**
 * The episode after `edits`, in order. Blocks that no edit touches keep their identity.
 * Pure: neither argument is changed.
 */
export function applyEdits(episode: Episode, edits: readonly Edit[]): Episode {
  return edits.reduce(applyEdit, episode);
}
