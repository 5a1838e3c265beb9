import { memo } from "react";
import { clock } from "../words/clock";
import type { PromptBlock, PromptScript } from "./script";

/** The words to read, one breath a line of its own; a marked breath shows its stroke. */
export const PromptText = memo(function PromptText({ script, now }: { script: PromptScript; now: number }) {
  return (
    <>
      {script.blocks.map((block) => {
        const first = block.stretches[0]?.index ?? 0;
        const past = Math.max(0, Math.min(block.stretches.length, now - first));
        return <PromptPart key={block.id} block={block} past={past} isHere={now >= first && now < first + block.stretches.length} />;
      })}
    </>
  );
});

const PromptPart = memo(function PromptPart({ block, past, isHere }: { block: PromptBlock; past: number; isHere: boolean }) {
  return (
    <section aria-label={`${block.number}. ${block.name}`}>
      <h2>{block.number} {block.name}, {clock(block.clip)}</h2>
      {block.stretches.map((stretch, i) => (
        <p key={stretch.index} data-stretch={stretch.index} aria-current={isHere && i === past ? "true" : undefined} className={`prompt-stretch ${i < past ? "past" : ""} ${stretch.breath}`}>
          {stretch.text}{stretch.breath === "marked" && <span className="stroke" role="img" aria-label="breath"> /</span>}
        </p>
      ))}
    </section>
  );
});
