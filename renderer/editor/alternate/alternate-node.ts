import { $create, $setState, ElementNode, type LexicalNode } from "lexical";
import { RowNode } from "../row/row-node";
import { idState } from "../states";

export const ALTERNATE_WORD = "if taken";

/** What to do when the station is taken. */
export class AlternateNode extends RowNode {
  override $config() {
    return this.config("alternate", { extends: ElementNode, stateConfigs: [{ stateConfig: idState, flat: true }] });
  }

  override word(): string {
    return ALTERNATE_WORD;
  }

  override hint(): string {
    return "what to do when the station is busy";
  }

  protected override rowClass(): string {
    return "alternate";
  }
}

export const $isAlternateNode = (node: LexicalNode | null | undefined): node is AlternateNode => node instanceof AlternateNode;

export function $createAlternateNode(id: string): AlternateNode {
  const node = $create(AlternateNode);
  $setState(node, idState, id);
  return node;
}
