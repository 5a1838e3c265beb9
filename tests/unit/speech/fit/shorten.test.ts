import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withoutFillers, withoutTail } from "../../../../shared/speech/fit/shorten";

describe("a sentence without its padding", () => {
  it.each([
    ["What I want you to do is push the floor away.", "Push the floor away."],
    ["What I want you to do here is to keep the chest up.", "Keep the chest up."],
    ["I want you to breathe out on the way up.", "Breathe out on the way up."],
    ["I really just want you to breathe out on the way up.", "Breathe out on the way up."],
    ["Now I'd like you to step back.", "Now step back."],
    ["Make sure you keep the heels down.", "Keep the heels down."],
    ["Make sure that you brace, then lift.", "Brace, then lift."],
    ["Go ahead and push the floor away.", "Push the floor away."],
    ["Just push the floor away.", "Push the floor away."],
    ["You just push the floor away.", "You push the floor away."],
    ["We are going to press the bar up.", "We press the bar up."],
    ["You sort of push the hips back.", "You push the hips back."],
    ["It's kind of heavy today.", "It's heavy today."],
    ["You know, the hips rise first.", "The hips rise first."],
    ["Basically, it is the same movement.", "It is the same movement."],
    ["Of course, your hips rise.", "Your hips rise."],
    ["It is, you know, the hip that moves.", "It is the hip that moves."],
    ["When you push, you know, the hips rise.", "When you push, the hips rise."],
    ["Push the hips back in order to load the hamstrings.", "Push the hips back to load the hamstrings."],
  ])("%j is %j", (sentence, shorter) => {
    expect(withoutFillers(sentence)).toBe(shorter);
  });

  it.each([
    "Make sure your hips stay level.", "Make sure you're balanced before you start.", "Make sure you can see the mirror.", "Try together this time.", "Try to touch your toes.",
    "What a very kind offer.", "It is very kind of you.", "It is kind of you.", "A very kind of person helps.", "This kind of squat is new.", "What sort of weight is it?", "It's some sort of row.",
    "Once you know your own weight, write it down.", "You know the rack.", "You know, and trust, your back.", "You know, deep down, that you can do more.", "What you know, you know.",
    "We are going to the floor.", "We're going to the floor.", "You are going to love this.", "You're going to hold the bar if you rush.", "We go ahead of the others.",
    "What I want you to do is simple.", "What I want you to do is a row.", "Do you see what I mean?", "I mean it.", "I want you to love this.",
    "If you just lower the bar halfway, it's fine.", "Push, basically, the floor.", "The hips, you know, the knees, all of it.", "You just started it.",
    "Stop just below the knee.", "Use just the bar today.", "Just one more.", "Just right.", "Put simply, it works.", "Count honestly.", "Take it literally.",
    "Lower it very slowly.", "Bend your knees a little bit.", "At the end of the day, stretch.", "It is quite heavy.", "A really slow rep.",
    "Of course you can.", "Part of course work.", "Put the plates in order to save time.", "Justice.", "Honestly.", "Just push.", "", "...",
  ])("%j stays", (sentence) => {
    expect(withoutFillers(sentence)).toBe(sentence);
  });
});

describe("a sentence without the reason at its end", () => {
  it.each([
    ["Keep your elbows in all the way down because they push the hips apart.", "Keep your elbows in all the way down."],
    ["Push the floor away, which feels odd at first!", "Push the floor away!"],
    ["You keep the ribs down, so that the back stays long.", "You keep the ribs down."],
    ["Now hold the bell close because it is lighter there", "Now hold the bell close."],
  ])("%j is %j", (sentence, shorter) => {
    expect(withoutTail(sentence)).toBe(shorter);
  });

  it.each([
    "Lower the bar slowly all the way down, but lift it fast.", "Lower the bar to the chest and then press it up again.", "The reason you fail down here is because you rush.",
    "The long black bar, which is heavy, goes up.", "The heavy black bar which you hold goes up.", "Decide for yourself on which side you start.", "If the bar moves early because you rush, start again.",
    "The weights you choose today because they feel easy are too light.", "Those people who rush every set because they are late tend to round the back.",
    "Pressing the bar up high because you can is easy.", "Set the safety arms so that the bar hangs over them.", "Keep the chest up tall because it helps and squeeze the glutes.",
    "Do your knees cave in because you rush?", "You do it like this only because it helps.", "Push the floor away.", "",
  ])("%j has none that may go", (sentence) => {
    expect(withoutTail(sentence)).toBeNull();
  });
});

describe("whatever is shortened", () => {
  const piece = fc.constantFrom(
    "what I want you to do is", "I want you to", "I'd like you to", "we are going to", "you're going to", "go ahead and", "make sure you", "make sure your", "try to", "you know,", "you know",
    ", you know,", "I mean,", "sort of", "kind of", "a little bit", "in order to", "just", "really", "very", "basically,", "basically", "of course,", "honestly", "together", "offer", "kindly", "justice",
    "push", "the floor", "away", "press", "it", "is", "heavy", "hips", "don’t", "never", "not", "because", ", which", ", so that", "and then", "but", "Now", "So,", "when", ".", "?", "the", "your", "to", "do",
  );
  const sentences = fc.oneof(fc.array(piece, { minLength: 1, maxLength: 12 }).map((words) => words.join(" ")), fc.string());
  const wordsOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}'’-]+/gu) ?? [];
  const isWithin = (some: readonly string[], all: readonly string[]): boolean => {
    let at = 0;
    for (const word of all) if (word === some[at]) at += 1;
    return at === some.length;
  };
  const VERBS = ["push", "press", "is", "do", "don’t"];
  const hasVerb = (text: string, verbs: readonly string[]): boolean => wordsOf(text).some((word) => verbs.includes(word));

  it("is whole words of the sentence, in their order, with every negation and something that is done", () => {
    fc.assert(fc.property(sentences, (sentence) => {
      const [bare, headed] = [withoutFillers(sentence), withoutTail(sentence)];
      expect(isWithin(wordsOf(bare), wordsOf(sentence))).toBe(true);
      expect(hasVerb(bare, VERBS)).toBe(hasVerb(sentence, VERBS));
      if (headed !== null) {
        expect(isWithin(wordsOf(headed), wordsOf(sentence))).toBe(true);
        // "it" and then no verb is no sentence to begin with
        if (!/^(?:(?:now|so,?|then)\s+)*it\b/i.test(sentence)) expect(hasVerb(headed, [...VERBS, "mean", "know", "want", "make", "go", "are", "like", "you're"])).toBe(true);
      }
      const negations = (text: string): string[] => wordsOf(text).filter((word) => ["not", "never", "don’t"].includes(word));
      expect(negations(withoutFillers(sentence))).toEqual(negations(sentence));
    }), { numRuns: 1500 });
  });
});
