import type { ReactNode } from "react";
import { blockName, type Block } from "../../shared/episode";
import { useActions } from "../session/context";
import "./place.css";

/** The frame of a place: its name, what it decides, the figures a decision hangs on. */
export function PlaceFrame({ title, about, figures, children }: { title: string; about: string; figures?: ReactNode; children: ReactNode }) {
  return (
    <div className="place">
      <header className="place-head">
        <h1>{title}</h1>
        <p className="soft">{about}</p>
        {figures && <dl className="figures">{figures}</dl>}
      </header>
      {children}
    </div>
  );
}

/** A big number with its words under it, and by how much it is too much. */
export function Figure({ value, label, over = null }: { value: string; label: string; over?: string | null }) {
  return (
    <div>
      <dt>{label}</dt>
      <dd>
        {value}
        {over !== null && <em>{over}</em>}
      </dd>
    </div>
  );
}

/** One block's part of a place. Its name leads to the words; the ribbon finds it by its id. */
export function BlockPart({ block, number, aside, children }: { block: Block; number: number; aside?: ReactNode; children: ReactNode }) {
  const { goTo } = useActions();
  return (
    <section className="part" id={`at-${block.id}`} aria-label={`${number}. ${blockName(block)}`}>
      <div className="part-head">
        <span className="part-number">{number}</span>
        <h2><button type="button" title="Go to these words" onClick={() => goTo({ block: block.id })}>{blockName(block)}</button></h2>
        {aside !== undefined && <div className="part-aside">{aside}</div>}
      </div>
      <div className="part-body">{children}</div>
    </section>
  );
}

/** A wide table that scrolls by itself, also with the keyboard. */
export function WideTable({ label, children }: { label: string; children: ReactNode }) {
  return <div className="wide-table" role="region" aria-label={label} tabIndex={0}><table>{children}</table></div>;
}

/** What a place says before there is anything in it. */
export function EmptyPlace({ children }: { children: ReactNode }) {
  return <p className="place-empty soft">{children}</p>;
}
