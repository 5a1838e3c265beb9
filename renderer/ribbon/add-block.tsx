import { useEffect, useRef, useState, type KeyboardEvent } from "react";
import { BLOCK_KINDS, BLOCK_KIND_NAMES, blockName, emptyBlock, type BlockKind } from "../../shared/episode";
import { useActions, useSession } from "../session/context";
import { placeForNew } from "./order";

/** Adds an empty block of one of the six kinds, where such a block belongs. */
export function AddBlock() {
  const { episode, here } = useSession();
  const actions = useActions();
  const [open, setOpen] = useState(false);
  const root = useRef<HTMLDivElement>(null);
  const opener = useRef<HTMLButtonElement>(null);
  const items = (): HTMLElement[] => [...(root.current?.querySelectorAll<HTMLElement>('[role="menuitem"]') ?? [])];

  useEffect(() => {
    if (!open) return;
    items()[BLOCK_KINDS.indexOf("exercise")]?.focus();
    const onPress = (event: PointerEvent): void => {
      if (event.target instanceof Node && !root.current?.contains(event.target)) setOpen(false);
    };
    window.addEventListener("pointerdown", onPress);
    return () => window.removeEventListener("pointerdown", onPress);
  }, [open]);

  const close = (): void => {
    setOpen(false);
    opener.current?.focus();
  };
  const add = (kind: BlockKind): void => {
    const block = emptyBlock(actions.newId, kind);
    setOpen(false);
    actions.apply([{ type: "insert-block", at: placeForNew(kind, episode.blocks, here.block), block }]);
    actions.goTo({ block: block.id });
  };
  const where = (kind: BlockKind): string => {
    const before = episode.blocks[placeForNew(kind, episode.blocks, here.block) - 1];
    return before ? `after ${blockName(before)}` : "first";
  };
  const onMenuKey = (event: KeyboardEvent): void => {
    const all = items();
    const at = all.findIndex((item) => item === document.activeElement);
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[event.key];
    if (to !== undefined) {
      event.preventDefault();
      all.at(to % all.length)?.focus();
    } else if (event.key === "Escape") {
      event.preventDefault();
      event.stopPropagation();
      close();
    } else if (event.key === "Tab") setOpen(false);
  };

  return (
    <div className="add-block" ref={root}>
      <button type="button" ref={opener} className="plain-button" aria-haspopup="menu" aria-expanded={open} onClick={() => setOpen(!open)}>
        Add a block
      </button>
      {open && (
        <ul role="menu" aria-label="Kind of block" className="add-block-menu" onKeyDown={onMenuKey}>
          {BLOCK_KINDS.map((kind) => (
            <li key={kind} role="none">
              <button type="button" role="menuitem" tabIndex={-1} aria-label={`${BLOCK_KIND_NAMES[kind]}, ${where(kind)}`} onClick={() => add(kind)}>
                {BLOCK_KIND_NAMES[kind]} <span>{where(kind)}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
