import { $create, $getState, $setState, ElementNode, type LexicalNode } from "lexical";
import { LINE_KIND_HELP, type LineKind } from "../../../shared/episode";
import { RowNode } from "../row/row-node";
import { idState, lineKindState } from "../states";

/** A line of one of the six kinds, the kind's word in the margin. */
export class LineNode extends RowNode {
  override $config() {
    return this.config("line", { extends: ElementNode, stateConfigs: [{ stateConfig: idState, flat: true }, { stateConfig: lineKindState, flat: true }] });
  }

  override word(): string {
    return $getState(this, lineKindState);
  }

  override hint(): string {
    return LINE_KIND_HELP[$getState(this, lineKindState)];
  }

  protected override rowClass(): string {
    return "line";
  }
}

export const $isLineNode = (node: LexicalNode | null | undefined): node is LineNode => node instanceof LineNode;

export function $createLineNode(id: string, kind: LineKind): LineNode {
  const node = $create(LineNode);
  $setState(node, idState, id);
  $setState(node, lineKindState, kind);
  return node;
}
