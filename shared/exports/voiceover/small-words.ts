/** Words that carry little by themselves: where one stands, a key phrase ends. */
const SMALL = `a about above across after again against all almost already also although always am an and another any anybody anyone anything are around as
ask at away back be because been before being below best better between both but by came can can't cannot come could day did didn't do does doesn't doing
don't done down each eight either else end enough even ever every everybody everyone everything feel feels few first five for four from get gets getting give
given go goes going gonna good got had has have having he her here hers him his how i i'd i'll i'm i've if in into is isn't it it's its itself just keep keeps
kind know last late later leave less let let's like little look lot made make makes many maybe me mean means might mine more most much must my myself near
need needs never next nine no nobody none not nothing now of off often ok okay on once one only onto or other others our ours out over own part per put
quite rather ready really right said same say see seven several shall she should side since six so some somebody someone something sort start starts still such
sure take takes ten than thank thanks that that's the their theirs them themselves then there there's these they they're thing things think this those three
through till time times to today told too toward towards try turn two under until up upon us use very want was way we we'll we're well were what when where
which while who whoever whole whom whose why will with within without won't would yes yet you you'd you'll you're you've your yours yourself welcome hello everyone
would shape build become stay change carry set w e.g i.e etc approx vs`;

const KNOWN: ReadonlySet<string> = new Set(SMALL.split(/\s+/));

/** Case and a typographic apostrophe do not matter. */
export const isSmallWord = (word: string): boolean => KNOWN.has(word.toLowerCase().replace(/’/g, "'"));
