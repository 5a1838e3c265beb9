/** What comes back from the gym: a small file or a code, read, checked, and turned into edits of the episode. */
export { REPORT_FORMAT, REPORT_VERSION, sessionReportSchema, type SessionReport } from "./schema";
export { crc32, readCode, writeCode } from "./code";
export { readReport, writeReport, writeReportCode, type ReportRead } from "./read";
export { editsOf, liftedInWords, takeOver, type ReportLine, type ReportSummary, type TakenOver } from "./edits";
