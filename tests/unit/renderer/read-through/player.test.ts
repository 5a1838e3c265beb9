import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createPlayer, type Playable, type Player } from "../../../../renderer/read-through/player";

/** A player whose sounds are answered and end when the test says so. */
function listening() {
  const asked = new Map<string, (base64: string | null) => void>();
  const sounds: { take: string; plays: boolean; over: () => void }[] = [];
  const player: Player = createPlayer(
    (take) => new Promise((resolve) => asked.set(take, resolve)),
    (take): Playable => {
      const sound = { take, plays: false, over: (): void => undefined };
      sounds.push(sound);
      return {
        play: async () => void (sound.plays = true),
        pause: () => {
          sound.plays = false;
          sound.over();
        },
        onOver: (over) => void (sound.over = over),
      };
    },
  );
  return {
    player,
    answer: async (take: string, base64: string | null = take): Promise<void> => {
      asked.get(take)?.(base64);
      await new Promise((resolve) => setTimeout(resolve, 0));
    },
    end: (): void => {
      for (const sound of sounds.filter(({ plays }) => plays)) {
        sound.plays = false;
        sound.over();
      }
    },
    heard: (): string[] => sounds.filter(({ plays }) => plays).map(({ take }) => take),
  };
}

describe("listening to a take", () => {
  it("plays it, is shown while it is fetched, and is over at its end", async () => {
    const { player, answer, end, heard } = listening();
    void player.listen("a");
    expect(player.playing.get()).toBe("a");
    await answer("a");
    expect(heard()).toEqual(["a"]);
    end();
    expect(player.playing.get()).toBeNull();
  });

  it.each([["first", ["a", "b"]], ["last", ["b", "a"]]])("never plays two: of two pressed quickly the second is heard, though its sound comes %s", async (_when, order) => {
    const { player, answer, heard } = listening();
    void player.listen("b");
    void player.listen("a");
    for (const take of order) await answer(take);
    expect([heard(), player.playing.get()]).toEqual([["a"], "a"]);
  });

  it("is silent when it was stopped while the sound was fetched, and while it played", async () => {
    const { player, answer, heard } = listening();
    void player.listen("a");
    player.quiet();
    await answer("a");
    expect([heard(), player.playing.get()]).toEqual([[], null]);
    void player.listen("b");
    await answer("b");
    player.quiet();
    expect([heard(), player.playing.get()]).toEqual([[], null]);
  });

  it("is over when there is no sound", async () => {
    const { player, answer } = listening();
    void player.listen("a");
    await answer("a", null);
    expect(player.playing.get()).toBeNull();
  });

  it("plays at most one, and just the one shown, whatever is pressed and whenever sounds come", async () => {
    const step = fc.oneof(fc.constantFrom("a", "b", "c").map((take) => ["listen", take] as const), fc.constantFrom("a", "b", "c").map((take) => ["answer", take] as const), fc.constant(["quiet", ""] as const), fc.constant(["end", ""] as const));
    await fc.assert(fc.asyncProperty(fc.array(step, { maxLength: 15 }), async (steps) => {
      const { player, answer, end, heard } = listening();
      for (const [what, take] of steps) {
        if (what === "listen") void player.listen(take);
        else if (what === "answer") await answer(take);
        else if (what === "quiet") player.quiet();
        else end();
        const shown = player.playing.get();
        expect(heard().filter((one) => one !== shown)).toEqual([]);
        expect(heard().length).toBeLessThanOrEqual(1);
      }
    }));
  });
});
