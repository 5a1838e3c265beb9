import type { Episode } from "../episode";
import { MAX_CODE, MAX_REPORT_BYTES, readCode, writeCode } from "./code";
import { REPORT_FORMAT, REPORT_VERSION, sessionReportSchema, type SessionReport } from "./schema";

export type ReportRead =
  | { readonly ok: true; readonly report: SessionReport }
  | { readonly ok: false; readonly code: "empty" | "too-big" | "not-a-report" | "damaged" | "newer-version" | "other-episode"; readonly message: string };

const refuse = (code: Extract<ReportRead, { ok: false }>["code"], message: string): ReportRead => ({ ok: false, code, message });

/** The text of a report's file. */
export const writeReport = (report: SessionReport): string => `${JSON.stringify(report, null, 2)}\n`;

/** The report as one line to copy and paste. */
export const writeReportCode = (report: SessionReport): string => writeCode(JSON.stringify(report));

const DAMAGED = "The code is damaged: a part is missing or was changed on the way. Copy it again, all of it, or hand back the file.";
const NOT_ONE = 'This is nothing a phone sheet handed back. Choose the file that ends in ".session.json", or paste the code that begins with "RWS".';

function readJson(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

const fieldOf = (value: unknown, name: string): unknown => (typeof value === "object" && value !== null ? (value as Record<string, unknown>)[name] : undefined);

/** What a file holds or what was pasted, as a report of this episode; or one sentence that says what is wrong. */
export function readReport(text: string, episode: Pick<Episode, "id">): ReportRead {
  const bare = text.replace(/^\ufeff/, "").trim();
  if (bare === "") return refuse("empty", "There is nothing in it. Hand back on the phone again, and copy the whole code or take the file.");
  const isJson = bare.startsWith("{");
  if (bare.length > (isJson ? MAX_REPORT_BYTES : MAX_CODE)) return refuse("too-big", `This is far more than a session: ${bare.length} characters. ${NOT_ONE}`);
  let value: unknown;
  if (isJson) {
    value = readJson(bare);
    if (value === undefined) return refuse("damaged", "The file is damaged: it is cut short or was changed. Hand back on the phone again.");
  } else {
    const code = readCode(bare);
    if (!code.ok) {
      if (code.reason === "none") return refuse("not-a-report", NOT_ONE);
      return code.reason === "newer" ? refuse("newer-version", "The code comes from a newer Repwright than this one. Nothing was taken over.") : refuse("damaged", DAMAGED);
    }
    value = readJson(code.json);
  }
  if (fieldOf(value, "format") !== REPORT_FORMAT) return refuse("not-a-report", NOT_ONE);
  const version = fieldOf(value, "version");
  if (typeof version === "number" && version > REPORT_VERSION) return refuse("newer-version", `This comes from a newer Repwright: version ${version}, and this one reads ${REPORT_VERSION}. Nothing was taken over.`);
  const parsed = sessionReportSchema.safeParse(value);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    const where = issue?.path.map((part) => (typeof part === "number" ? `[${part}]` : `.${String(part)}`)).join("").replace(/^\./, "") || "the top";
    return refuse("damaged", `The file is no whole session. At ${where}: ${(issue?.message ?? "not as expected").replace(/^Invalid input: /, "")}. Hand back on the phone again.`);
  }
  if (parsed.data.episode !== episode.id) return refuse("other-episode", `This is another episode's session${parsed.data.title === "" ? "" : `: "${parsed.data.title}"`}. Open that episode and take it over there.`);
  return { ok: true, report: parsed.data };
}
