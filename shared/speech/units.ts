/** How a unit is written after a number, and how one and many of it are said. */
export interface SpokenUnit {
  /** Alternatives of a regular expression; case matters only where `exact` says so. */
  readonly written: string;
  readonly one: string;
  readonly many: string;
  /** The letters mean something else in the other case (L is left, l is litre). */
  readonly exact?: true;
  /** Understood without a number too: the letters mean nothing else. */
  readonly alone?: true;
}

/** Units of the gym floor. Longer spellings stand first where one begins like another. */
export const UNITS_SAID: readonly SpokenUnit[] = [
  { written: "W/kg", one: "watt per kilo", many: "watts per kilo", alone: true },
  { written: "g/kg", one: "gram per kilo", many: "grams per kilo", alone: true },
  { written: "kgs?", one: "kilo", many: "kilos", alone: true },
  { written: "lbs?", one: "pound", many: "pounds", alone: true },
  { written: "g", one: "gram", many: "grams", exact: true },
  { written: "kcal", one: "calorie", many: "calories", alone: true },
  { written: "km/h|kph", one: "kilometre an hour", many: "kilometres an hour", alone: true },
  { written: "mph", one: "mile an hour", many: "miles an hour", alone: true },
  { written: "m/s", one: "metre a second", many: "metres a second", alone: true },
  { written: "mins?", one: "minute", many: "minutes" },
  { written: "secs?|s", one: "second", many: "seconds" },
  { written: "hrs?|h", one: "hour", many: "hours" },
  { written: "wks?", one: "week", many: "weeks" },
  { written: "km", one: "kilometre", many: "kilometres", alone: true },
  { written: "cm", one: "centimetre", many: "centimetres", alone: true },
  { written: "mm", one: "millimetre", many: "millimetres", alone: true },
  { written: "m", one: "metre", many: "metres", exact: true },
  { written: "yds?", one: "yard", many: "yards" },
  { written: "ft", one: "foot", many: "feet" },
  { written: "ml", one: "millilitre", many: "millilitres" },
  { written: "l", one: "litre", many: "litres", exact: true },
  { written: "L", one: "left", many: "left", exact: true },
  { written: "R", one: "right", many: "right", exact: true },
  { written: "bpm", one: "beat a minute", many: "beats a minute", alone: true },
  { written: "spm", one: "step a minute", many: "steps a minute", alone: true },
  { written: "fps", one: "frame a second", many: "frames a second", alone: true },
  { written: "Hz", one: "hertz", many: "hertz" },
  { written: "°\\s?C", one: "degree Celsius", many: "degrees Celsius", exact: true },
  { written: "°\\s?F", one: "degree Fahrenheit", many: "degrees Fahrenheit", exact: true },
  { written: "°|º|deg", one: "degree", many: "degrees" },
  { written: "%", one: "percent", many: "percent", alone: true },
  { written: "RIR", one: "rep in reserve", many: "reps in reserve" },
  { written: "RMs", one: "rep maxes", many: "rep maxes", exact: true },
  { written: "RM", one: "rep max", many: "rep max" },
];

/** The unit a piece of text is, or null. */
export function unitOf(written: string): SpokenUnit | null {
  return UNITS_SAID.find(({ written: pattern, exact }) => new RegExp(`^(?:${pattern})$`, exact ? "" : "i").test(written)) ?? null;
}

/** Every way a unit may be written, as one alternation to match after a number; case is told apart by `unitOf`. */
export const UNIT_PATTERN = UNITS_SAID.map(({ written }) => written).join("|");

/** Things named by their weight or length: "a twenty kilo bell", not "kilos". */
export const MEASURED_THINGS = "bells?|kettlebells?|dumbbells?|barbells?|plates?|bars?|balls?|sandbags?|bags?|bottles?|jugs?|vests?|packs?|backpacks?|weights?|holds?|hangs?|pauses?|rests?|breaks?|walks?|runs?|rows?|planks?|box(?:es)?|steps?|blocks?|inclines?|declines?|bench(?:es)?|angles?|stacks?|gaps?|jumps?|carry|carries|intervals?|timers?|warm-ups?|cool-downs?|videos?|clips?|lens(?:es)?|sprints?|sessions?|ones?";
