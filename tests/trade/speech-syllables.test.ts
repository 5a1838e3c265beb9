import { dictionary } from "cmu-pronouncing-dictionary";
import { describe, expect, it } from "vitest";
import { syllablesOf } from "../../shared/speech";

/** Words of coaching and of everyday speech, chosen for what they are used for, hard ones among them. */
const WORDS = `
squat barbell dumbbell exercise repetition shoulder shoulders hamstring hamstrings muscle muscles quadriceps triceps biceps burpee tempo workout
rhythm plank lunge lunges press pressing pull pulling push pushing row rowing hinge hinges bend bending straight straighten lower lowering lift
lifting raise raising drive driving squeeze squeezing breathe breathing breath inhale exhale brace bracing relax relaxed tension control controlled
slowly quickly smoothly steady stable stability balance balanced knee knees hip hips ankle ankles elbow elbows wrist wrists neck spine chest ribs
ribcage abdominal abdominals oblique obliques glute calf calves heel heels toes foot feet hand hands finger fingers thumb grip gripping palm palms
forearm forearms upper back body bodyweight trunk core pelvis pelvic belly stomach bench bar bell bells plate plates cable machine pulley handle
handles rope band bands box step steps mat floor wall rack racks collar collars sled treadmill rower bicycle weight weights heavy heavier light
lighter load loaded loading kilo kilos pound pounds percent degree degrees second seconds minute minutes metre metres hour one two three four five six
seven eight nine ten eleven twelve thirteen fourteen fifteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand first third warm
warming cool cooling stretch stretching stretches mobility flexible flexibility rotate rotation circle circles swing swings carry carries carrying
walk walking start starting finish finishing stop stopping pause pausing rest resting hold holding repeat repeated set sets rep reps session program
programme training trainer coach coaching beginner beginners advanced intermediate older pregnant teenager doctor physician physiotherapist qualified
professional injury injuries pain painful sharp discomfort dizzy every other another around across behind between through towards toward above below
under over inside outside together apart elevate elevated extension extend extended flexion flex neutral vertical horizontal diagonal parallel
position positions posture alignment aligned strength strong stronger power powerful endurance cardio aerobic energy tired fatigue recovery recover
progress progression progressive really actually usually naturally comfortable comfortably individual different difficult similar necessary imagine
remember video camera angle front side rear episode description subscribe trail backpack mountain pocket pockets table chair fire your you're don't
can't won't that's it's let's we're they're didn't shouldn't couldn't isn't people little able squatted jumped jumping landing landed lifted rested
needed wanted asked walked pushed pulled breathed closed area idea science quiet being doing going seeing trying buying idiot lion ruin fluid create
created react reaction theory audio radio studio kneel kneeling half-kneeling supine prone incline decline overhead forward backward sideways upward
downward upright vertebra vertebrae scapula deltoid deltoids trapezius latissimus pectoral gluteus maximus medius soleus gastrocnemius achilles
patella femur tibia sandbag medicine goblet farmer suitcase evening family everything everybody interesting separate several favorite natural
generally probably temperature vegetable chocolate business towel mirror water bottle music phone tripod microphone battery poem poet diet trial dial
flower tower our fuel cruel real ideal
`.trim().split(/\s+/);

/** Syllables of every pronunciation: phonemes that end in a stress digit. Empty when the dictionary has no such word. */
function dictionarySyllables(word: string): number[] {
  return [word, `${word}(2)`, `${word}(3)`, `${word}(4)`].map((key) => dictionary[key]).filter((sounds) => sounds !== undefined).map((sounds) => sounds.match(/\d/g)?.length ?? 0);
}

describe("syllables against the CMU Pronouncing Dictionary", () => {
  const known = WORDS.map((word) => ({ word, counts: dictionarySyllables(word), ours: syllablesOf(word) })).filter(({ counts }) => counts.length > 0);
  const first = known.filter(({ counts, ours }) => counts[0] === ours);
  const any = known.filter(({ counts, ours }) => counts.includes(ours));

  it("agree with the first pronunciation for at least nineteen words in twenty", () => {
    console.log(`syllables: ${known.length} words in the dictionary, ${((first.length / known.length) * 100).toFixed(1)} % as first pronounced, ${((any.length / known.length) * 100).toFixed(1)} % as pronounced at all`);
    expect(known.length).toBeGreaterThan(400);
    expect(first.length / known.length).toBeGreaterThanOrEqual(0.95);
    expect(any.length / known.length).toBeGreaterThanOrEqual(0.98);
  });

  it("lean to neither side: the sum over all words is within one part in a hundred", () => {
    const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
    const share = sum(known.map(({ ours }) => ours)) / sum(known.map(({ counts }) => counts[0] ?? 0));
    expect(Math.abs(share - 1)).toBeLessThan(0.015);
  });

  // Counted in the dictionary's December 2024 snapshot, first pronunciations.
  it.each([
    ["squat", 1], ["barbell", 2], ["dumbbell", 2], ["exercise", 3], ["repetition", 4], ["shoulder", 2], ["hamstrings", 2], ["muscle", 2],
    ["quadriceps", 3], ["triceps", 2], ["biceps", 2], ["burpee", 2], ["tempo", 2], ["workout", 2], ["rhythm", 2], ["plank", 1], ["lunge", 1],
  ])("%s has %i", (word, count) => {
    expect(syllablesOf(word)).toBe(count);
    expect(dictionarySyllables(word)[0]).toBe(count);
  });

  it.each([["fire", [2, 1]], ["hour", [2, 1]], ["every", [3, 2]]])("%s may have either of two counts, and the shorter is taken", (word, counts) => {
    expect(dictionarySyllables(word)).toEqual(counts);
    expect(syllablesOf(word)).toBe(Math.min(...counts));
  });

  // Not in the dictionary; as said, common practice.
  it.each([["kettlebell", 3], ["deadlift", 2], ["glutes", 1], ["isometric", 4]])("%s is a trade word of %i", (word, count) => {
    expect(dictionarySyllables(word)).toEqual([]);
    expect(syllablesOf(word)).toBe(count);
  });
});
