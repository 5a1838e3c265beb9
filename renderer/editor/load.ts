import { $getRoot, $getState, $setState, type ElementNode, type LexicalNode } from "lexical";
import type { Block, Episode } from "../../shared/episode";
import { $createAlternateNode, $isAlternateNode } from "./alternate/alternate-node";
import { $createBlockNode, $isBlockNode, $setBlockHead, type BlockNode } from "./block/block-node";
import { $createLineNode, $isLineNode } from "./line/line-node";
import { $isSheetNode, $setText, type Row } from "./rows";
import { $createSetLineNode, $isSetLineNode } from "./set-line/set-line-node";
import { headState, idState, lineKindState, setRoleState } from "./states";

/** Marks updates that bring whole texts in: nothing in them is taken for typing. */
export const LOAD_TAG = "repwright-load";

type Known = Map<string, Row | BlockNode>;

/** Nodes on the sheet by their episode id. */
function $known(): Known {
  const known: Known = new Map();
  for (const node of $getRoot().getChildren()) if ($isSheetNode(node)) known.set($getState(node, idState), node);
  return known;
}

const withText = <N extends ElementNode>(node: N, text: string): N => {
  $setText(node, text);
  return node;
};

/** The nodes of one block: those already on the sheet under the same ids, brought up to date, and new ones. */
function $blockNodes(block: Block, known: Known): LexicalNode[] {
  const { id, kind, exercise, station, minutes, clipSeconds, actuals, filming = null } = block;
  const facts = { id, kind, exercise, station, minutes, clipSeconds, actuals, filming };
  const found = known.get(id);
  const head = $isBlockNode(found) ? $setBlockHead(found, facts) : $createBlockNode(facts);
  const sets = block.sets.map((set) => {
    const before = known.get(set.id);
    const node = $isSetLineNode(before) ? before : $createSetLineNode(set.id, set.role);
    if ($getState(node, setRoleState) !== set.role) $setState(node, setRoleState, set.role);
    return withText(node, set.text);
  });
  const lines = block.lines.map((line) => {
    const before = known.get(line.id);
    const node = $isLineNode(before) ? before : $createLineNode(line.id, line.kind);
    if ($getState(node, lineKindState) !== line.kind) $setState(node, lineKindState, line.kind);
    return withText(node, line.text);
  });
  const alternates = block.alternates.map((alternate) => {
    const before = known.get(alternate.id);
    return withText($isAlternateNode(before) ? before : $createAlternateNode(alternate.id), alternate.text);
  });
  return [withText(head, block.title), ...sets, ...lines, ...alternates];
}

/** Puts `wanted` on the sheet in this order, moving what is there and removing what is left over. */
function $arrange(wanted: readonly LexicalNode[]): void {
  const root = $getRoot();
  let place: LexicalNode | null = root.getFirstChild();
  for (const node of wanted) {
    if (place !== null && place.is(node)) place = place.getNextSibling();
    else if (place === null) root.append(node);
    else place.insertBefore(node);
  }
  while (place !== null) {
    const leftOver: LexicalNode = place;
    place = place.getNextSibling();
    leftOver.remove();
  }
}

/**
 * Makes the sheet hold this episode. Blocks that are still the objects of `before` keep their nodes untouched,
 * so the caret and the undo history see only what changed.
 */
export function $syncEpisode(episode: Episode, before: Episode | null = null): void {
  const { blocks, ...head } = episode;
  const root = $getRoot();
  $setState(root, headState, head);
  const known = $known();
  const unchanged = new Set(before?.blocks ?? []);
  const wanted = blocks.flatMap((block) => {
    const node = known.get(block.id);
    if (!unchanged.has(block) || !$isBlockNode(node)) return $blockNodes(block, known);
    const nodes: LexicalNode[] = [node];
    for (let next = node.getNextSibling(); next && !$isBlockNode(next); next = next.getNextSibling()) nodes.push(next);
    return nodes;
  });
  $arrange(wanted.length > 0 ? wanted : [$placeholder()]);
}

/** An empty page still needs a place for the caret: a head without an id, which the projection leaves out. */
export function $placeholder(): BlockNode {
  return $createBlockNode({ id: "", kind: "opening", exercise: null, station: "", minutes: null, clipSeconds: null, actuals: [], filming: null });
}
