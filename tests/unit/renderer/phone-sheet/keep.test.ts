import { describe, expect, it } from "vitest";
import { demoEpisode } from "../../../../shared/episode";
import { phoneSession } from "../../../../shared/exports";
import { keep, readKept } from "../../../../renderer/phone-sheet/run/keep";
import type { Press } from "../../../../renderer/phone-sheet/run/presses";
import { typedNumber } from "../../../../renderer/phone-sheet/view/lifted";

const session = phoneSession(demoEpisode);
const presses: Press[] = [{ type: "start", at: 5 }];

/** A storage as browsers have it. */
function memory(): Storage {
  const map = new Map<string, string>();
  return {
    get length() {
      return map.size;
    },
    clear: () => map.clear(), getItem: (key) => map.get(key) ?? null, key: (i) => [...map.keys()][i] ?? null, removeItem: (key) => void map.delete(key), setItem: (key, value) => void map.set(key, value),
  };
}
const refused = (): Storage => {
  throw new Error("SecurityError");
};

describe("what a phone remembers", () => {
  it("is the presses of this plan of this episode, and that an older plan lies there too", () => {
    const store = memory();
    expect(keep(session, presses, () => store)).toBe(true);
    expect(readKept(session, () => store)).toEqual({ presses, keeps: true, hasOlder: false });
    expect(readKept({ ...session, plan: "newer" }, () => store)).toEqual({ presses: [], keeps: true, hasOlder: true });
    expect(readKept({ ...session, episode: "other" }, () => store)).toEqual({ presses: [], keeps: true, hasOlder: false });
  });

  it("is nothing where storage is refused, full or spoiled, and that is said", () => {
    expect(readKept(session, refused)).toEqual({ presses: [], keeps: false, hasOlder: false });
    expect(keep(session, presses, refused)).toBe(false);
    const full: Storage = { ...memory(), setItem: refused };
    expect(readKept(session, () => full).keeps).toBe(false);
    const spoiled = memory();
    keep(session, presses, () => spoiled);
    spoiled.setItem(spoiled.key(0) ?? "", '[{"type":"start"},7,{"type":"start","at":1}');
    expect(readKept(session, () => spoiled)).toEqual({ presses: [], keeps: false, hasOlder: false });
    spoiled.setItem(spoiled.key(0) ?? "", '[{"type":"start","at":1},7,null,{"type":"fly","at":1},{"type":"start"}]');
    expect(readKept(session, () => spoiled).presses).toEqual([{ type: "start", at: 1 }]);
  });
});

describe("a typed number", () => {
  const load = { most: 2000, decimals: true };
  it.each([["22,5", 22.5], ["22.5", 22.5], [" 8 ", 8], ["", null], ["abc", undefined], ["-3", undefined], ["1e3", undefined], ["2001", undefined], ["22.5.1", undefined]])("reads %j as %j", (text, value) => {
    expect(typedNumber(text, load)).toBe(value);
  });
  it("takes no part of a rep", () => expect(typedNumber("8.5", { most: 1000, decimals: false })).toBeUndefined());
});
