import { $create, $getState, $setState, ElementNode, type LexicalNode } from "lexical";
import type { SetRole } from "../../../shared/episode";
import { RowNode } from "../row/row-node";
import { idState, setRoleState } from "../states";

export const SET_ROLE_WORDS: Readonly<Record<SetRole, string>> = { "ramp-up": "ramp-up", working: "sets" };

/** A set line: the shorthand of a scheme, read back in words beside it. */
export class SetLineNode extends RowNode {
  override $config() {
    return this.config("set-line", { extends: ElementNode, stateConfigs: [{ stateConfig: idState, flat: true }, { stateConfig: setRoleState, flat: true }] });
  }

  override word(): string {
    return SET_ROLE_WORDS[$getState(this, setRoleState)];
  }

  override hint(): string {
    return $getState(this, setRoleState) === "working" ? "3 x 8-10 @ 40 kg, tempo 3-1-1-0, rest 90 s, RIR 2" : "1 x 8 @ 20 kg, rest 60 s";
  }

  protected override rowClass(): string {
    return "set-line";
  }
}

export const $isSetLineNode = (node: LexicalNode | null | undefined): node is SetLineNode => node instanceof SetLineNode;

export function $createSetLineNode(id: string, role: SetRole): SetLineNode {
  const node = $create(SetLineNode);
  $setState(node, idState, id);
  $setState(node, setRoleState, role);
  return node;
}
