import { useRef, useState } from "react";
import { RELATIONS, type Partner } from "../../shared/episode";
import { Choice } from "../fields/choice";
import { DraftField } from "../fields/draft-field";
import { readName } from "../fields/read";
import { useActions, useSession } from "../session/context";

const RELATION_NAMES: Readonly<Record<Partner["relation"], string>> = { paid: "Paid", gifted: "Gifted", affiliate: "Affiliate link", "own brand": "Own brand" };
const MAX_PARTNERS = 20;

/** Who gave money or goods, and the words that tell viewers so. */
export function Partners() {
  const { episode } = useSession();
  const actions = useActions();
  const list = useRef<HTMLDivElement>(null);
  const [said, setSaid] = useState("");
  const { partners } = episode;
  const set = (next: Partner[]): void => actions.apply([{ type: "set-facts", fields: { partners: next } }]);
  const change = (id: string, fields: Partial<Partner>): void => set(partners.map((partner) => (partner.id === id ? { ...partner, ...fields } : partner)));
  const add = (): void => {
    set([...partners, { id: actions.newId(), name: "", relation: "gifted", disclosure: "" }]);
    setSaid("Partner added.");
    requestAnimationFrame(() => list.current?.querySelector<HTMLElement>(".partner:last-of-type input")?.focus());
  };
  return (
    <fieldset>
      <legend>Partners</legend>
      <div ref={list}>
        {partners.map((partner) => (
          <div key={partner.id} className="facts-grid partner" role="group" aria-label={`Partner ${partner.name || "without a name"}`}>
            <DraftField label="Name" value={partner.name} read={readName(200)} onCommit={(name) => change(partner.id, { name })} />
            <Choice label="Relation" value={partner.relation} options={RELATIONS.map((value) => ({ value, label: RELATION_NAMES[value] }))} onChoose={(relation) => change(partner.id, { relation })} />
            <button
              type="button" className="word-button" aria-label={`Remove ${partner.name || "this partner"}`}
              onClick={() => {
                set(partners.filter((one) => one.id !== partner.id));
                setSaid(`${partner.name || "Partner"} removed.`);
              }}
            >
              Remove
            </button>
            <DraftField
              className="whole" label="What viewers are told" value={partner.disclosure} read={readName(500)} onCommit={(disclosure) => change(partner.id, { disclosure })}
              help="Say it at the start, in plain words: who gave what, and that it is an ad if it is one."
            />
          </div>
        ))}
      </div>
      {partners.length === 0 && <p className="second">Nobody gave money or goods for this episode.</p>}
      <button type="button" className="word-button" disabled={partners.length >= MAX_PARTNERS} onClick={add}>Add a partner</button>
      <p className="visually-hidden" aria-live="polite">{said}</p>
    </fieldset>
  );
}
