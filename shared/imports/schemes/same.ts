import type { Scheme } from "../../training";

const WHOLE = ["sets", "repsMin", "repsMax", "reps", "seconds", "meters", "amrap", "emomMinutes", "restSeconds"] as const;
/** "Same again" is what the exercise before was, unless this one's own work was said already. */
const AGAIN = /same (?:again|thing|deal|drill|story)/;

/** What "the same" refers to, by what stands after it. */
const PARTS: readonly (readonly [RegExp, readonly (keyof Scheme)[]])[] = [
  [/same (?:sets and reps|sets|scheme|numbers|format|protocol|as (?:before|last|the last|that|the first|for)|reps(?: and sets)?|for (?:this|these))/, WHOLE],
  [AGAIN, WHOLE],
  [/same (?:\w+ and )?(?:rest|break)/, ["restSeconds"]],
  [/same (?:\w+ and )?tempo/, ["tempo"]],
  [/same (?:\w+ and )?(?:weights?|load|bells?|dumbbells?|kettlebells?|kilos|plates)/, ["load"]],
  [/same (?:\w+ and )?(?:effort|rpe)|same in the tank/, ["rpe", "rir"]],
];

/** Said of a wish and not of the plan: "at the same time", "the same muscles". */
const HOLLOW = /(?:is|it's|isn't|not|basically|really|exactly) the same thing|same (?:time|way|muscles?|side|idea|principle|place|position|line|reason)/g;

/**
 * The parts of the scheme before that a block's words take over: "same again", "same rest as before".
 * @param opening - the words before the block's own work
 */
export function sameAs(text: string, opening: string, before: Scheme | null): Partial<Scheme> {
  if (before === null) return {};
  const [plain, first] = [text.replace(HOLLOW, ""), opening.replace(HOLLOW, "")];
  const fields = PARTS.flatMap(([said, parts]) => (said.test(said === AGAIN ? first : plain) ? parts : []));
  return Object.fromEntries(fields.filter((field) => before[field] !== undefined).map((field) => [field, before[field]]));
}
