import { describe, expect, it } from "vitest";
import { countingIds } from "../../../../shared/episode";
import { importText } from "../../../../shared/imports";

const exercises = (said: string): string[] => {
  const result = importText(said, "", countingIds("i-"));
  return result.ok ? result.episode.blocks.filter(({ kind }) => kind === "exercise").map(({ exercise, title }) => exercise ?? title) : [];
};

const BEFORE = "hello everyone welcome back so first up front squats three sets of five at sixty kilos keep your elbows up and your heels down don't let your chest drop";
const AFTER = "push your hips back and keep your back long and that's it for today thanks for watching see you next week";

describe("an exercise begins where a coach turns to it", () => {
  it.each([
    "next up romanian deadlifts three sets of eight",
    "okay next is the romanian dead lift three sets of eight",
    "alright so moving on to romanian deadlifts and it's three sets of eight",
    "now we're going to do romanian deadlifts three sets of eight",
    "then we've got romanian deadlifts three sets of eight",
    "second exercise romanian deadlifts three sets of eight",
    "number two is romanian deadlifts three sets of eight",
    "so after that it's romanian deadlifts for three sets of eight",
    "from there we go into romanian deadlifts three sets of eight",
    "okay romanian deadlifts three sets of eight",
    "right let's do some romanian deadlifts so three sets of eight",
    "and the next one on the list is a romanian deadlift three sets of eight",
    "so stay with us because we're doing romanian deadlifts three sets of eight",
    "keep the bar out because it's time for romanian deadlifts three sets of eight",
    "over to the platform now for romanian deadlifts three sets of eight",
    "the second movement today is the romanian deadlift three sets of eight",
    "we follow that with romanian deadlifts three sets of eight",
    "let's move on to the r d l three sets of eight",
    "and we finish with romanian deadlifts three sets of eight",
    "last but not least romanian dead lifts three sets of eight",
    "exercise two romanian deadlifts three sets of eight",
    "up next we have romanian deadlifts three sets of eight",
    "alright hinge time romanian deadlifts three sets of eight",
    "we're pairing that with romanian deadlifts three sets of eight",
    "i've written down romanian deadlifts here so three sets of eight",
    "the next station is romanian deadlifts three sets of eight",
    "b one is romanian deadlifts three sets of eight",
    "what's next romanian deadlifts three sets of eight",
    "romanian deadlifts next please three sets of eight",
  ])("%s", (said) => {
    expect(exercises(`${BEFORE} ${said} ${AFTER}`)).toEqual(["front-squat", "romanian-deadlift"]);
  });
});

describe("what is named before it is told to come next", () => {
  it("begins as well", () => {
    expect(exercises(`${BEFORE} so romanian deadlifts are up next three sets of eight ${AFTER}`)).toEqual(["front-squat", "romanian-deadlift"]);
  });
});

describe("an exercise that nothing names", () => {
  // Not yet: it is taken for one of the catalogue.
  it("stands with its sets, without a name, and is listed", () => {
    const result = importText(`${BEFORE} okay next one we lie on the floor with a little ball thing and we roll it about with the toes three sets of ten each side feels lovely and then the last one today it's bench press four sets of eight at fifty kilos ${AFTER}`, "", countingIds("i-"));
    if (!result.ok) throw new Error(result.message);
    const nameless = result.episode.blocks.filter(({ title }) => title === "Unnamed exercise");
    expect(nameless.map(({ exercise, sets }) => [exercise, sets.map(({ text }) => text)])).toEqual([[null, ["3 x 10 each side"]]]);
    expect(result.notUnderstood.filter(({ reason }) => reason === "no name").map(({ text, block }) => [text, block])).toEqual([["okay next one we lie on the floor with a little ball", nameless[0]?.id]]);
  });
});

describe("a short word on the way to the next exercise", () => {
  it("begins nothing of its own", () => {
    expect(exercises("Quick pull session. Lat pulldown, 3 sets of 10 at 50 kilos, 90 seconds rest. Cable row, same again. Then face pulls, 2 x 15, light. Finish with hammer curls, 3 x 12 with the 10s.")).toEqual(["lat-pulldown", "cable-row", "face-pull", "hammer-curl"]);
  });
});

describe("what a coach surely turns to begins", () => {
  it.each([
    ["my elbow felt like somebody's doorbell last week with the dips so without rear delts on the bench face down fives in each hand twenty reps three sets forty five seconds not more", "rear-shoulder-raise"],
    ["and roll on to your side push up with your hands to sit on one hip legs folded to the side like a mermaid six of those two times", "Unnamed exercise"],
  ])("though what is named near it is named in passing: %s", (said, exercise) => {
    expect(exercises(`${BEFORE} ${said} ${AFTER}`)).toEqual(["front-squat", exercise]);
  });

  it.each([
    ["ten arm circles each way and ten hip circles and some easy marching and that's you warm so block one we start with a goblet squat three sets of twelve at twelve kilos keep your chest up and then push-ups three sets of ten", ["goblet-squat", "push-up"]],
    ["two minutes of marching on the spot and ten hip circles each way loosen up the shoulders and we're warm so pair number one is the chest supported row three sets of ten at twenty kilos each hand and then bench press three sets of eight at fifty", ["chest-supported-row", "bench-press"]],
  ])("in the breath that ends the warm-up: %s", (said, order) => {
    expect(exercises(`hello everyone welcome back ${said} ${AFTER}`)).toEqual(order);
  });
});

describe("an exercise named in passing begins nothing", () => {
  it.each([
    "last week we did romanian deadlifts and my legs were sore for days",
    "this carries over to your deadlift by the way",
    "it's a bit like a goblet squat but the bar sits in front",
    "if you can't do these then do goblet squats instead",
    "some people ask me about hip thrusts and i say they're fine",
    "next week we'll do bench press and rows",
    "i used to hate lunges when i was younger",
    "it's not a good morning so don't bend forward",
    "this helps your pull ups too believe it or not",
    "if the rack is taken swap it for leg presses",
    "i did bench press yesterday so my chest is tired",
    "my friend only does bicep curls and he's still weak",
    "don't turn it into a good morning",
    "we'll get to the farmers carries next month",
    "you don't need to push up on your toes",
    "press up through your heels and step up to the bar again",
    "people who do leg press think this is easy",
    "there was a video about kettlebell swings that i liked",
    "the guy next to me is doing lat pulldowns with the whole stack",
    "you can see the leg press behind me it's always free",
  ])("%s", (said) => {
    expect(exercises(`${BEFORE} ${said} ${AFTER}`)).toEqual(["front-squat"]);
  });
});

describe("misheard names", () => {
  it.each([
    ["lap pull downs", "lat-pulldown"], ["lat pole downs", "lat-pulldown"], ["goblin squats", "goblet-squat"], ["ben over rose", "bent-over-row"], ["bent over roads", "bent-over-row"],
    ["romanian dead lift", "romanian-deadlift"], ["roman ian deadlifts", "romanian-deadlift"], ["r d ls", "romanian-deadlift"], ["face pools", "face-pull"], ["farmer's carries", "farmers-carry"], ["pharmacy carries", "farmers-carry"],
    ["bulgarian split squads", "bulgarian-split-squat"], ["hip trusts", "hip-thrust"], ["hip thrusters", "hip-thrust"], ["glue bridges", "glute-bridge"], ["cattle bell swings", "kettlebell-swing"], ["dead bogs", "dead-bug"],
    ["by sep curls", "biceps-curl"], ["half raises", "calf-raise"], ["lateral races", "lateral-raise"], ["tricep push downs", "triceps-pushdown"], ["in client dumbbell press", "incline-dumbbell-press"], ["land mine press", "half-kneeling-landmine-press"],
    ["seeded cable rows", "cable-row"], ["chest supported rose", "chest-supported-row"], ["single arm dumb bell rows", "single-arm-dumbbell-row"], ["side blanks", "side-plank"], ["bird docks", "bird-dog"], ["overhead presses", "overhead-press"],
    ["suit case carries", "suitcase-carry"], ["hanging me raises", "hanging-knee-raise"], ["mountain climbers", "mountain-climber"], ["reverse lunch is", "reverse-lunge"], ["walking lunges", "walking-lunge"], ["step ops", "step-up"],
    ["anti rotation presses", "anti-rotation-press"], ["ab wheel roll outs", "ab-wheel-rollout"], ["bench presses", "bench-press"], ["leg extinctions", "leg-extension"],
    ["hamstring curls", "leg-curl"], ["skull crashers", "lying-triceps-extension"], ["hammock curls", "hammer-curl"], ["chin ups", "chin-up"], ["medicine ball slams", "medicine-ball-slam"], ["would chops", "cable-woodchop"], ["wall sits", "wall-sit"],
  ])("%s", (said, exercise) => {
    expect(exercises(`hello everyone welcome okay so first up ${said} three sets of ten ${AFTER}`)).toEqual([exercise]);
  });
});

describe("what is spoken of before it is turned to", () => {
  it("is what the first turn without a name turns to", () => {
    const said = "hello everyone welcome back it's sunday and today's deadlifts and then front squats i already did my warm up while the kettle was on so let's get straight to the bar first one is sixty kilos and i'm going to do five and that's always the one that feels the worst okay so a hundred three reps here and then the top set today is one forty for three keep your back long and push the floor away {60} now front squats three sets of five at sixty kilos keep your elbows up and your heels down and that's it for today thanks for watching see you next week";
    expect(exercises(said.replace(" {60}", ""))).toEqual(["deadlift", "front-squat"]);
  });

  it("is not turned to where it is only led over", () => {
    const said = "hello everyone welcome back i marched on the spot for a few minutes and did some squats and some big arm swings and that'll do so the first three are a little circuit three rounds squats floor press rows and then a minute's sit down at the end of each round squats are goblet squats one dumbbell held at the chest twelve of them and keep your chest tall then straight down onto the floor press knees bent ten of those with the sixes one in each hand lower until your elbows touch and then the row with the ten kilo hand on the sofa ten each side pull your elbow to your hip and that's it for today thanks for watching see you next week";
    expect(exercises(said)).toEqual(["goblet-squat", "dumbbell-floor-press", "single-arm-dumbbell-row"]);
  });
});
