import { Menu, type MenuItemConstructorOptions } from "electron";
import type { EventPayload } from "../shared/bridge";

type Item = EventPayload<"menu:chosen">["item"];

/**
 * The window's menu. What the page does on a key press itself is only shown here, not taken from the page:
 * undo in a small text field must stay that field's own.
 */
export function menuTemplate(choose: (item: Item) => void, isMac: boolean): MenuItemConstructorOptions[] {
  const item = (label: string, name: Item, accelerator?: string): MenuItemConstructorOptions => ({
    label,
    click: () => choose(name),
    ...(accelerator === undefined ? {} : { accelerator, registerAccelerator: false }),
  });
  const line: MenuItemConstructorOptions = { type: "separator" };
  return [
    ...(isMac ? [{ role: "appMenu" } satisfies MenuItemConstructorOptions] : []),
    {
      label: "&File",
      submenu: [
        item("New episode", "new", "CmdOrCtrl+N"),
        item("Open…", "open", "CmdOrCtrl+O"),
        item("Save", "save", "CmdOrCtrl+S"),
        line,
        item("Make the papers…", "make-papers"),
        line,
        { role: isMac ? "close" : "quit" },
      ],
    },
    {
      label: "&Edit",
      submenu: [
        item("Undo", "undo", "CmdOrCtrl+Z"),
        item("Redo", "redo", "CmdOrCtrl+Shift+Z"),
        line,
        { role: "cut" }, { role: "copy" }, { role: "paste" }, { role: "selectAll" },
      ],
    },
    { label: "&View", submenu: [{ role: "zoomIn" }, { role: "zoomOut" }, { role: "resetZoom" }, line, { role: "togglefullscreen" }] },
    { role: "windowMenu" },
    { label: "&Help", submenu: [item("What Repwright checks", "checks")] },
  ];
}

export function setMenu(choose: (item: Item) => void): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(choose, process.platform === "darwin")));
}
