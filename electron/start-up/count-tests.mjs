import { readFileSync } from "node:fs";

/** What one runner reported. `skipped` tests count for nothing but are told. */
const nothing = { passed: 0, failed: 0, skipped: 0 };

function readJson(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return null;
  }
}

/** A runner that failed without a failing test, by a file that does not load or a crash, is one failure. */
function settle(count, code) {
  return code !== 0 && count.failed === 0 ? { ...count, failed: 1 } : count;
}

/** Counts of vitest's JSON report. */
export function countVitest(path, code) {
  const report = readJson(path);
  if (report === null) return settle(nothing, code === 0 ? 1 : code);
  return settle({ passed: report.numPassedTests, failed: report.numFailedTests, skipped: report.numPendingTests + report.numTodoTests }, code);
}

/** Counts of Playwright's JSON report; a test that passed only at a second try is a failure. */
export function countPlaywright(path, code) {
  const report = readJson(path);
  if (report === null) return settle(nothing, code === 0 ? 1 : code);
  const { expected, unexpected, flaky, skipped } = report.stats;
  return settle({ passed: expected, failed: unexpected + flaky, skipped }, code);
}
