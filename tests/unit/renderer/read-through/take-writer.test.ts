import { describe, expect, it, vi } from "vitest";
import type { Api, Take } from "../../../../shared/bridge";
import { createTakeWriter } from "../../../../renderer/read-through/take-writer";

const RATE = 100;
const of = { file: "a.episode.json", line: "l1", text: "Sit.", name: "1 Opening line 1", planned: 1, rate: RATE };
const take: Take = { id: "t1", line: "l1", text: "Sit.", file: "x-take-1.wav", seconds: null, recorded: 0, planned: 1, at: "2027-03-04T10:00:00.000Z", chosen: true };

/** A host that writes down what it is sent, and fails when told to. */
function host() {
  const samples: number[] = [];
  const fails = { begin: false, append: false, end: false };
  const problem = { ok: false as const, code: "disk-full", message: "The disk is full." };
  const api: Pick<Api, "takes:begin" | "takes:append" | "takes:end"> = {
    "takes:begin": async () => (fails.begin ? problem : { ok: true, take }),
    "takes:append": async ({ after, samples: base64 }) => {
      if (fails.append) return problem;
      const bytes = Buffer.from(base64, "base64");
      for (let i = 0; i < bytes.length / 2; i++) samples[after + i] = bytes.readInt16LE(i * 2);
      return { ok: true, samples: samples.length };
    },
    "takes:end": async ({ seconds }) => (fails.end ? problem : { ok: true, take: { ...take, seconds } }),
  };
  return { api, samples, fails };
}

const pieces = (from: number, count: number): Int16Array[] => Array.from({ length: count }, (_, i) => Int16Array.from({ length: 10 }, (__, j) => from + i * 10 + j));
const upTo = (n: number): number[] => Array.from({ length: n }, (_, i) => i);
const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

describe("a take being written", () => {
  it("arrives whole and in order, while it is spoken and at its end", async () => {
    const { api, samples } = host();
    const writer = createTakeWriter(api, of, vi.fn());
    for (const piece of pieces(0, 37)) {
      writer.push(piece);
      await turn();
    }
    expect(samples.length).toBeGreaterThanOrEqual(300);
    expect(await writer.end(1.5)).toEqual({ ok: true, take: { ...take, seconds: 1.5 } });
    expect(samples).toEqual(upTo(370));
  });

  it("without a sample is still a take", async () => {
    const { api } = host();
    expect(await createTakeWriter(api, of, vi.fn()).end(null)).toEqual({ ok: true, take });
  });

  it.each(["begin", "append", "end"] as const)("keeps every sample in memory when %s fails, says so once, and goes on where it stopped", async (step) => {
    const { api, samples, fails } = host();
    const onProblem = vi.fn();
    const writer = createTakeWriter(api, of, onProblem);
    fails[step] = true;
    for (const piece of pieces(0, 25)) {
      writer.push(piece);
      await turn();
    }
    expect(await writer.end(2)).toEqual({ ok: false, sentence: "The disk is full." });
    expect(await writer.again()).toEqual({ ok: false, sentence: "The disk is full." });
    expect(onProblem).toHaveBeenCalledTimes(2);
    fails[step] = false;
    expect(await writer.again()).toEqual({ ok: true, take: { ...take, seconds: 2 } });
    expect(samples).toEqual(upTo(250));
  });

  it("counts a host that does not answer as a problem like another", async () => {
    const { api } = host();
    const writer = createTakeWriter({ ...api, "takes:begin": () => Promise.reject(new Error("The host does not answer.")) }, of, vi.fn());
    expect(await writer.end(1)).toEqual({ ok: false, sentence: "The host does not answer." });
  });
});
