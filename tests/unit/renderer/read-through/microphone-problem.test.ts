import { describe, expect, it } from "vitest";
import { microphoneProblem, surroundings, type Surroundings } from "../../../../renderer/read-through/microphone-problem";

const refusal = (message = "Permission denied"): DOMException => new DOMException(message, "NotAllowedError");
const WITHOUT = "You can go on without it: tap at the end of each line.";

describe("what a window runs in", () => {
  it.each<[string, Surroundings]>([
    ["Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/537.36 (KHTML, like Gecko) repwright/0.1.0 Chrome/150.0.0.0 Electron/45.4.1 Safari/537.36", { window: "own", system: "macOS" }],
    ["Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/150.0.0.0 Safari/537.36", { window: "browser", system: "Windows" }],
    ["Mozilla/5.0 (X11; Linux x86_64) AppleWebKit/537.36 (KHTML, like Gecko) repwright/0.1.0 Chrome/150.0.0.0 Electron/45.4.1 Safari/537.36", { window: "own", system: "other" }],
    ["Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0", { window: "browser", system: "other" }],
    ["", { window: "browser", system: "other" }],
  ])("is told from %j", (userAgent, here) => {
    expect(surroundings(userAgent)).toEqual(here);
  });
});

describe("a refused microphone says what to do", () => {
  it.each<[Surroundings["system"], RegExp]>([
    ["macOS", /Allow it for this app in System Settings, Privacy & Security, Microphone\. Then quit this app, open it again/],
    ["Windows", /Allow it in Settings, Privacy & security, Microphone: both microphone access and desktop apps must be on\./],
    ["other", /Allow it for this app in the privacy or sound settings of your desktop/],
  ])("in our own window on %s", (system, what) => {
    const sentence = microphoneProblem(refusal(), { window: "own", system });
    expect(sentence).toMatch(/^The microphone was refused\. /);
    expect(sentence).toMatch(what);
    expect(sentence.endsWith(WITHOUT)).toBe(true);
  });

  it.each<Surroundings["system"]>(["macOS", "Windows", "other"])("in a browser on %s: beside the address, when the page was refused", (system) => {
    expect(microphoneProblem(refusal(), { window: "browser", system })).toMatch(/^The microphone was refused\. Allow it for this page: open what stands left of the page's address/);
  });

  it.each<[Surroundings["system"], RegExp]>([["macOS", /your browser in System Settings/], ["Windows", /in Settings, Privacy & security/], ["other", /settings of your desktop/]])("in a browser on %s: in the system's settings, when that refused it", (system, what) => {
    const sentence = microphoneProblem(refusal("Permission denied by system"), { window: "browser", system });
    expect(sentence).toMatch(/The system keeps it from your browser\./);
    expect(sentence).toMatch(what);
  });

  it("is told from a question that nobody answered", () => {
    expect(microphoneProblem(refusal("Permission dismissed"), { window: "browser", system: "other" })).toBe(`The question about the microphone was closed without an answer. Try again and allow it. ${WITHOUT}`);
  });
});

it.each([
  [new DOMException("", "NotFoundError"), /^No microphone was found\. Plug one in/],
  [new DOMException("", "NotReadableError"), /another program may be using it/],
  [new Error("the worklet is gone"), /^The microphone could not be opened: the worklet is gone\./],
  ["odd", /^The microphone could not be opened\./],
])("every other failure is told as well: %s", (error, sentence) => {
  expect(microphoneProblem(error, { window: "own", system: "macOS" })).toMatch(sentence);
});
