import type { Klass, LexicalNode } from "lexical";
import { AlternateNode } from "./alternate/alternate-node";
import { BlockNode } from "./block/block-node";
import { LineNode } from "./line/line-node";
import { SetLineNode } from "./set-line/set-line-node";

/** The node classes of the sheet. */
export const SHEET_NODES: readonly Klass<LexicalNode>[] = [BlockNode, SetLineNode, LineNode, AlternateNode];
