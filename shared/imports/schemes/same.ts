import type { Scheme } from "../../training";

/** What "the same" refers to, by what stands after it. */
const PARTS: readonly (readonly [RegExp, readonly (keyof Scheme)[]])[] = [
  [/same (?:sets and reps|sets|scheme|again|thing|deal|numbers|drill|story|format|protocol|as (?:before|last|the last|that|the first|for)|reps(?: and sets)?|for (?:this|these))/, ["sets", "repsMin", "repsMax", "reps", "seconds", "meters", "amrap", "emomMinutes", "restSeconds"]],
  [/same (?:\w+ and )?(?:rest|break)/, ["restSeconds"]],
  [/same (?:\w+ and )?tempo/, ["tempo"]],
  [/same (?:\w+ and )?(?:weights?|load|bells?|dumbbells?|kettlebells?|kilos|plates)/, ["load"]],
  [/same (?:\w+ and )?(?:effort|rpe)|same in the tank/, ["rpe", "rir"]],
];

/** Said of a wish and not of the plan: "at the same time", "the same muscles". */
const HOLLOW = /(?:is|it's|isn't|not|basically|really|exactly) the same thing|same (?:time|way|muscles?|side|idea|principle|place|position|line|reason)/g;

/** The parts of the scheme before that a block's words take over: "same again", "same rest as before". */
export function sameAs(text: string, before: Scheme | null): Partial<Scheme> {
  if (before === null) return {};
  const plain = text.replace(HOLLOW, "");
  const fields = PARTS.flatMap(([said, parts]) => (said.test(plain) ? parts : []));
  return Object.fromEntries(fields.filter((field) => before[field] !== undefined).map((field) => [field, before[field]]));
}
