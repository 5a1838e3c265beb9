import { useEffect, useId, useRef, type ReactNode } from "react";
import "./dialog.css";

interface Props {
  readonly open: boolean;
  readonly title: string;
  readonly onClose: () => void;
  /** A name for styles of its own. */
  readonly kind?: string;
  readonly children: ReactNode;
}

/** A modal sheet over the app. Escape closes it; the browser keeps the focus inside and gives it back. */
export function Dialog({ open, title, onClose, kind, children }: Props) {
  const element = useRef<HTMLDialogElement>(null);
  const heading = useId();
  useEffect(() => {
    const dialog = element.current;
    if (open && dialog && !dialog.open) dialog.showModal();
    if (!open && dialog?.open) dialog.close();
  }, [open]);
  return (
    <dialog ref={element} className={kind === undefined ? "dialog" : `dialog ${kind}`} aria-labelledby={heading} onClose={onClose}>
      {open && (
        <>
          <div className="dialog-head">
            <h2 id={heading}>{title}</h2>
            <button type="button" className="word-button" onClick={onClose}>Close</button>
          </div>
          {children}
        </>
      )}
    </dialog>
  );
}
