import { mkdtempSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";

/** A new empty folder, removed when the test file is done. */
export function temporaryFolder(): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), "repwright-test-")));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
