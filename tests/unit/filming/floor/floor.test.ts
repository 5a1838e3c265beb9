import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, FLOOR_SIDES, newLine, type Block, type Episode, type Floor, type PlacedMark } from "../../../../shared/episode";
import { ANGLES, EXERCISES } from "../../../../shared/exercises";
import { floorOf, frameAt, setupOf, SHOT_SIZES, snapped, spotAt, standAt, standFor, USUAL_SETUP, type BlockFloor } from "../../../../shared/filming";

const newId = countingIds("f-");
const filmed = (texts: readonly string[], fields: Partial<Block> = {}): Block =>
  emptyBlock(newId, "exercise", { station: "free floor", lines: texts.map((text) => newLine(newId, "shot", text)), ...fields });

const room = (fields: Partial<Floor> = {}): Floor => ({ station: "Free floor", walls: { ahead: null, behind: null, left: null, right: null }, mirrors: [], aisle: null, ...fields });
const walls = (ahead: number | null, behind: number | null, left: number | null, right: number | null): Floor["walls"] => ({ ahead, behind, left, right });

function floor(texts: readonly string[], at: Floor | null = null, fields: Partial<Block> = {}, filming?: Episode["session"]["filming"]): BlockFloor {
  const block = filmed(texts, fields);
  const empty = emptyEpisode(newId, { blocks: [block] });
  return floorOf({ ...empty, session: { ...empty.session, ...(at ? { floors: [at] } : {}), ...(filming ? { filming } : {}) } }, block);
}
const moved = (marks: PlacedMark[]): Partial<Block> => ({ filming: { marks, filmed: [] } });
const rounded = (spot: readonly [number, number] | undefined): number[] => (spot ?? []).map((value) => Math.round(value * 100) / 100 + 0);

describe("a station from above", () => {
  it("puts each angle at its bearing, all on one side of the line", () => {
    const { marks, line } = floor(["Front, full: a", "Side, full: b", "Rear, full: c", "Three-quarter, full: d"]);
    expect(marks.map(({ bearing }) => bearing)).toEqual([0, 90, 180, 45]);
    expect(rounded(marks[0]?.spot)).toEqual([0, 2.6]);
    expect(rounded(marks[1]?.spot)).toEqual([-2.6, 0]);
    expect(rounded(marks[2]?.spot)).toEqual([0, -2.6]);
    expect(line).toEqual({ along: "faces", side: "left", crossing: [] });
  });

  it("fans out marks that would stand on each other, on the cameras' side", () => {
    const { marks, line } = floor(["Side, full: a", "Side, medium, set 1: b", "Side, close-up: c", "High, full: d", "Low, full: e", "Front, full: f"]);
    for (const [at, one] of marks.entries()) {
      for (const other of marks.slice(at + 1)) expect(Math.hypot(one.spot[0] - other.spot[0], one.spot[1] - other.spot[1])).toBeGreaterThan(0.1);
    }
    expect(line.crossing).toEqual([]);
  });

  it("gives an insert a place, close by", () => {
    const { marks } = floor(["Insert, 6 s: the grip"]);
    expect(marks[0]).toMatchObject({ angle: "insert", size: "insert", shows: "a detail, 0.6 m across" });
    expect(marks[0]?.distance).toBeGreaterThan(marks[0]?.stand.distance ?? 9);
    expect(marks[0]?.distance).toBeLessThan(1);
  });

  it("says in words what the frame shows", () => {
    const shown = (text: string, exercise: string | null = null): string | undefined => floor([text], null, { exercise }).marks[0]?.shows;
    expect(shown("Side, full: a")).toBe("head to toe with 0.2 m above");
    expect(shown("Front, medium: a")).toBe("waist up; the feet are cut");
    expect(shown("Side, full: a", "plank")).toBe("the whole body with 0.1 m at each side");
    expect(shown("Front, close-up: a")).toBe("head or one joint, 0.8 m across");
  });

  it("keeps a mark where the coach put it, and frames it from there", () => {
    const { marks } = floor(["Side, full: a"], null, moved([{ mark: "side full", bearing: 75, distance: 4 }]));
    expect(marks[0]).toMatchObject({ bearing: 75, distance: 4, isMoved: true, shows: "head to toe with 0.8 m above" });
    expect(marks[0]?.stand.distance).toBe(4);
  });

  it("finds the room by the station's name, whatever its case, also the exercise's own station", () => {
    expect(floor(["Side: a"], room({ station: " FREE FLOOR" })).room).not.toBeNull();
    expect(floor(["Side: a"], room(), { station: "", exercise: "goblet-squat" }).room).not.toBeNull();
    expect(floor(["Side: a"], room({ station: "bench" })).room).toBeNull();
  });

  it("adds up the smallest room: the mark, the phone and the person behind it", () => {
    // by hand: 2.6 + 0.6 + 0.25 = 3.45 to the left; the movement's own half metre on the right
    expect(floor(["Side, full: a"]).smallestRoom).toEqual({ ahead: 0.5, behind: 0.5, left: 3.5, right: 0.5 });
  });
});

describe("what is in the way", () => {
  it("names a wall that is too near, by how much, and a lens, a size or a place that fits", () => {
    const { marks } = floor(["Front, full: a"], room({ walls: walls(3, null, null, null) }));
    expect(marks[0]?.problems).toEqual([
      "Mark A (front, full): the room is 0.5 m too short ahead for the phone at 2.6 m and you behind it. Take the ultra-wide lens and stand at 1.3 m, frame it medium from 1.2 m or move it to 45° from ahead on the left.",
    ]);
  });

  it("films from the right when the left has no room", () => {
    const { line, marks, problems } = floor(["Side, full: a", "Three-quarter, full: b"], room({ walls: walls(null, null, 2, 5) }));
    expect(line.side).toBe("right");
    expect(marks.map(({ bearing }) => bearing)).toEqual([-90, -45]);
    expect(problems).toEqual([]);
  });

  it("keeps the aisle free", () => {
    const moving = moved([{ mark: "side full", bearing: 90, distance: 2.6 }]);
    expect(floor(["Side, full: a"], room({ aisle: "left" }), moving).problems).toEqual([
      "Mark A (side, full) stands in the aisle on the left, where people walk past. Move it to 45° from ahead on the left.",
    ]);
    // unmoved, the cameras go to the other side by themselves
    expect(floor(["Side, full: a"], room({ aisle: "left" })).problems).toEqual([]);
  });

  it("names a mark across the line, and lets marks on the line be", () => {
    const moving = moved([{ mark: "side full", bearing: 90, distance: 2.6 }, { mark: "three-quarter full", bearing: -45, distance: 2.6 }, { mark: "low full", bearing: 60, distance: 2.6 }]);
    const { line, problems } = floor(["Side, full: a", "Three-quarter, full: b", "Rear, full: c", "Low, full: d"], null, moving);
    expect(line).toEqual({ along: "faces", side: "left", crossing: ["B"] });
    expect(problems).toEqual(["Mark B (three-quarter, full) stands across the line the subject faces along: left and right change places in the cut. Film it from the left, or cut to it from a mark on the line."]);
  });

  it("names a mark inside the movement and a lens that stands clear", () => {
    const { problems } = floor(["Front, close-up: a"], null, { exercise: "deadlift" });
    expect(problems[0]).toMatch(/^Mark A \(front, close-up\) stands inside the movement, which needs 0\.7 m there\. Take the tele lens and stand at 1\.9 m/);
  });

  it("says when a lens needs more floor than gyms have", () => {
    const { problems } = floor(["Side, full: a"], null, {}, { lens: 1200, stature: 1.75, format: "", freeGigabytes: null, batteryMinutes: null });
    expect(problems[0]).toBe("Mark A (side, full) stands 122.0 m away, farther than most gyms have free floor. Take the tele lens and stand at 7.8 m.");
  });

  it("says when the movement itself has no room", () => {
    expect(floor(["Front, full: a"], room({ walls: walls(null, null, 1, null) }), { exercise: "deadlift" }).problems.at(-1)).toBe("The movement itself needs 1.1 m on the left, and the wall is at 1.0 m: train it elsewhere, or measure again.");
  });

  it("keeps a place that no shot asks for any more, and says so", () => {
    expect(floor(["Front, full: a"], null, moved([{ mark: "side wide", bearing: 90, distance: 3 }])).problems).toEqual(['A place for "side wide" is kept, but no shot asks for it.']);
  });

  it("says when there is nothing to place", () => {
    expect(floor([]).problems).toEqual(["No shot is planned here, so no camera has a mark."]);
  });
});

describe("mirrors", () => {
  it("show the camera when it looks straight at them, and say from where they do not", () => {
    const { marks, problems } = floor(["Rear, full: a"], room({ walls: walls(2, null, null, null), mirrors: ["ahead"] }));
    // by hand: a 26 mm lens sees 34.7 degrees to each side; the camera's image is straight behind the mirror
    expect(marks[0]?.mirrors).toEqual([{ side: "ahead", showsCamera: true, safeBearing: 135 }]);
    expect(problems).toEqual(["The mirror ahead shows the camera and whoever stands behind it in mark A (rear, full). With the camera at 135° from ahead on the left it does not."]);
  });

  it("are of no matter behind the camera", () => {
    expect(floor(["Front, full: a"], room({ walls: walls(4, null, null, null), mirrors: ["ahead"] })).marks[0]?.mirrors).toEqual([]);
  });

  it("show the gym behind the camera when they stand at the edge of the frame", () => {
    const { marks } = floor(["Side, full: a"], room({ walls: walls(1.5, null, null, 4), mirrors: ["ahead"] }));
    expect(marks[0]?.mirrors).toEqual([{ side: "ahead", showsCamera: false, safeBearing: null }]);
  });

  it("show more with a wider lens", () => {
    const at = (lens: "tele" | "ultra-wide"): boolean | undefined =>
      floor(["Rear, full: a"], room({ walls: walls(2, null, null, null), mirrors: ["ahead"] }), moved([{ mark: "rear full", bearing: 150, distance: 3 }]), { lens, stature: 1.75, format: "", freeGigabytes: null, batteryMinutes: null }).marks[0]?.mirrors[0]?.showsCamera;
    expect(at("ultra-wide")).toBe(true);
    expect(at("tele")).not.toBe(true);
  });

  it("agree with a ray sent from the camera to its own image", () => {
    fc.assert(fc.property(fc.double({ min: -179, max: 180, noNaN: true }), fc.double({ min: 0.8, max: 6, noNaN: true }), fc.constantFrom(...FLOOR_SIDES), (bearing, distance, side) => {
      const wall = 8;
      const mark = floor(["Side, full: a"], room({ walls: walls(wall, wall, wall, wall), mirrors: [side] }), moved([{ mark: "side full", bearing, distance }])).marks[0];
      const [x, y] = mark?.spot ?? [0, 0];
      const image: [number, number] = { ahead: [x, 2 * wall - y], behind: [x, -2 * wall - y], left: [-2 * wall - x, y], right: [2 * wall - x, y] }[side] as [number, number];
      // angle between the line of sight to the subject (the origin) and the line to the image
      const [toX, toY] = [image[0] - x, image[1] - y];
      const turn = (Math.acos(Math.max(-1, Math.min(1, (-x * toX - y * toY) / (Math.hypot(x, y) * Math.hypot(toX, toY))))) * 180) / Math.PI;
      const half = (Math.atan(36 / 52) * 180) / Math.PI;
      const seen = mark?.mirrors[0]?.showsCamera === true;
      if (turn < half) expect(seen).toBe(true);
      // the tripod is 0.6 m broad, and the mirror at least 2 m away
      if (turn > half + 5) expect(seen).toBe(false);
    }), { numRuns: 300 });
  });
});

const anyFilming = fc.record({
  lens: fc.oneof(fc.constantFrom("ultra-wide" as const, "main" as const, "tele" as const), fc.double({ min: 5, max: 1200, noNaN: true })),
  stature: fc.double({ min: 1, max: 2.5, noNaN: true }), format: fc.constant("x"), freeGigabytes: fc.constant(null), batteryMinutes: fc.constant(null),
});
const anyWall = fc.option(fc.double({ min: 0.1, max: 12, noNaN: true }));
const anyRoom = fc.record({
  station: fc.constant("free floor"), walls: fc.record({ ahead: anyWall, behind: anyWall, left: anyWall, right: anyWall }),
  mirrors: fc.uniqueArray(fc.constantFrom(...FLOOR_SIDES)), aisle: fc.option(fc.constantFrom(...FLOOR_SIDES)),
});
const anyShots = fc.array(fc.tuple(fc.constantFrom(...ANGLES), fc.constantFrom(...SHOT_SIZES)).map(([angle, size]) => `${angle}, ${size}: x`), { maxLength: 9 });
const anyMoves = fc.array(fc.record({ mark: fc.constantFrom("side full", "front medium", "low wide", "nobody's"), bearing: fc.double({ min: -180, max: 180, noNaN: true }), distance: fc.double({ min: 0.1, max: 50, noNaN: true }) }), { maxLength: 4 });
const anyExercise = fc.option(fc.constantFrom(...EXERCISES.map(({ id }) => id)));

describe("any station", () => {
  it("has no mark outside the room without a sentence", () => {
    fc.assert(fc.property(anyShots, anyRoom, anyMoves, anyFilming, anyExercise, (texts, at, marks, filming, exercise) => {
      const made = floor(texts, at, { ...moved(marks), exercise }, filming);
      for (const { spot: [right, ahead], problems, letter } of made.marks) {
        const out = ahead > (at.walls.ahead ?? Infinity) || -ahead > (at.walls.behind ?? Infinity) || right > (at.walls.right ?? Infinity) || -right > (at.walls.left ?? Infinity);
        if (out) expect(problems.some((text) => text.startsWith(`Mark ${letter} `) && text.includes("too short"))).toBe(true);
      }
      expect(made.problems.every((text) => /^[A-Z].*\.$/.test(text))).toBe(true);
      expect(made.marks.every(({ shows, bearing }) => shows !== "" && bearing > -180 && bearing <= 180)).toBe(true);
    }), { numRuns: 300 });
  });

  it("holds every mark in the smallest room it names", () => {
    fc.assert(fc.property(anyShots, anyMoves, anyExercise, (texts, marks, exercise) => {
      const { smallestRoom } = floor(texts, null, { ...moved(marks), exercise });
      const again = floor(texts, room({ walls: { ...smallestRoom } }), { ...moved(marks), exercise });
      // another side may be chosen in a known room; marks that stay where they were fit
      if (again.line.side === "left" || marks.length > 0) expect(again.problems.filter((text) => text.includes("too short") && again.line.side === "left")).toEqual([]);
    }), { numRuns: 200 });
  });

  it("snaps a mark to where it stays", () => {
    fc.assert(fc.property(anyShots.filter((texts) => texts.length > 0), anyRoom, anyFilming, anyExercise, fc.tuple(fc.double({ min: -15, max: 15, noNaN: true }), fc.double({ min: -15, max: 15, noNaN: true })), fc.nat(), (texts, at, filming, exercise, spot, pick) => {
      const made = floor(texts, at, { exercise }, filming);
      const mark = made.marks[pick % made.marks.length]?.mark ?? "";
      const once = snapped(made, mark, spot);
      expect(snapped(made, mark, spotAt(once.bearing, once.distance))).toEqual(once);
      const [right, ahead] = spotAt(once.bearing, once.distance);
      for (const [value, wall] of [[ahead, at.walls.ahead], [-ahead, at.walls.behind], [-right, at.walls.left], [right, at.walls.right]] as const) {
        expect(value).toBeLessThanOrEqual((wall ?? Infinity) + 1e-6);
      }
    }), { numRuns: 500 });
  });
});

describe("snapping", () => {
  const standing = floor(["Side, full: a"]);
  it("goes to the distance that frames a size when one is near", () => {
    expect(snapped(standing, "side full", spotAt(88, 2.5))).toMatchObject({ bearing: 90, distance: 2.6, shows: "head to toe with 0.2 m above" });
  });
  it("goes to half walking steps elsewhere, and to 15 degrees", () => {
    expect(snapped(standing, "side full", spotAt(70, 3.4))).toMatchObject({ bearing: 75, distance: 3.375 });
  });
  it("stays out of the movement and inside the walls", () => {
    expect(snapped(standing, "side full", [0, 0]).distance).toBeGreaterThan(0.5);
    const narrow = floor(["Side, full: a"], room({ walls: walls(null, null, 2, null) }));
    expect(snapped(narrow, "side full", spotAt(90, 4)).distance).toBeLessThanOrEqual(1.7);
  });
  it("takes a name nobody knows, and a spot that is none", () => {
    expect(snapped(standing, "nobody's", [Number.NaN, Infinity])).toMatchObject({ bearing: 0 });
  });
});

describe("what a frame shows at a distance", () => {
  it("undoes where the camera stands: from there it shows what was asked for", () => {
    fc.assert(fc.property(fc.constantFrom(...ANGLES), fc.constantFrom("wide" as const, "full" as const), anyExercise, anyFilming.filter(({ lens }) => typeof lens === "string"), (angle, size, exercise, filming) => {
      const block = filmed(["side: a"], { exercise });
      const empty = emptyEpisode(newId, { blocks: [block] });
      const setup = setupOf({ ...empty, session: { ...empty.session, filming } }, block);
      const { distance } = standFor({ ...setup, angle, size });
      const here = frameAt(setup, angle, size, distance);
      const near = frameAt(setup, angle, size, Math.max(0.1, distance - 0.1));
      const far = frameAt(setup, angle, size, distance + 0.1);
      expect(near.tall).toBeLessThanOrEqual(here.tall);
      expect(far.tall).toBeGreaterThanOrEqual(here.tall);
      if (distance > 0.3) expect(here.shows).not.toMatch(/the feet are cut|the sides are cut|head is cut/);
      expect(standAt(setup, { angle, size }, distance)).toEqual(standFor({ ...setup, angle, size }));
    }), { numRuns: 300 });
  });

  it("cuts from below, and keeps the head", () => {
    expect([0.5, 1, 1.5, 2, 2.6].map((distance) => frameAt(USUAL_SETUP, "side", "full", distance).shows.split(";")[0])).toEqual([
      "head and shoulders", "waist up", "knees up", "shins up", "head to toe with 0.2 m above",
    ]);
  });

  it("takes any distance without throwing", () => {
    expect(frameAt(USUAL_SETUP, null, null, Number.NaN).shows).not.toBe("");
    expect(frameAt(USUAL_SETUP, "front", "wide", -4).shows).not.toBe("");
  });
});

describe("the demonstration episode", () => {
  it("has a floor for every block", () => {
    for (const block of demoEpisode.blocks) expect(floorOf(demoEpisode, block).marks.length).toBe(new Set(block.lines.filter(({ kind }) => kind === "shot").map(({ text }) => text.split(/, (?:set|\d)/)[0])).size);
  });
});
