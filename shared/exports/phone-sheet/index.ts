/** The phone sheet: the session as one page for a phone, with its own timers and replanning, that needs no network. */
import type { Exporter } from "../types";
import { phoneSheetHtml } from "./page";
import { phoneSession } from "./session";

export { phoneSession } from "./session";
export { phoneSheetHtml } from "./page";
export type { PhoneBlock, PhoneExtra, PhoneMark, PhonePage, PhoneSession, PhoneSet, PhoneShot } from "./types";

const IN_SESSION_UNITS = "The phone sheet counts in the session's own unit, for what is typed there goes back into it.";

export const phoneSheet: Exporter = {
  meta: { id: "phone-sheet.html", title: "Phone sheet", extension: "html", mime: "text/html", source: "WHATWG HTML; W3C Content Security Policy Level 3" },
  render: async (episode, { page, units }) => {
    if (page === undefined) throw new Error("phoneSheet: the page's script and style were not handed in");
    const html = await phoneSheetHtml(phoneSession(episode), page);
    return { bytes: new TextEncoder().encode(html), notes: units === episode.session.units ? [] : [IN_SESSION_UNITS] };
  },
};
