/** What single sentences say about the order of an episode. Patterns over plain words, lower case, without signs. */

/** Directly before an exercise's name: it is what comes now. */
const INTRODUCES = new RegExp(
  "(?:\\b(?:and (?:two|three|four|five|six|seven)|okay|ok|alright|all right|right|now|so|anyway|off with|away with|(?:one|two|"
  + "three|four|five|six|seven) is|today is|today it's|block (?:one|two|three|four|five|six|[a-e]|\\d)|main (?:thing|lift|"
  + "exercise|event|course)|next up|up next|next|first up|first off|first|first exercise|second|third|fourth|fifth|sixth|last|"
  + "final|finally|last up|last one|last exercise|last but not least|number (?:one|two|three|four|five|six|seven|\\d)|"
  + "exercise (?:number )?(?:one|two|three|four|five|six|seven|\\d)|station (?:one|two|three|four|five|six|\\d)|"
  + "moving on to|move on to|moves? into|moving into|onto|on to|over to|straight into|right into|into|time for|called(?: the|"
  + " a)?|finish(?:es|ing)?(?: off| up)?(?: today| this)?(?: with)?|start(?:s|ing)?(?: off| out)?(?: today)?(?: with)?|"
  + "begin(?:s|ning)?(?: with)?|kick(?:ing)?(?: it| this| things| us)? off with|end(?:ing)?(?: up| off| it| things)?(?: with| on)|"
  + "lastly|last of all|clos(?:e|ing)(?: out)? with|wrap(?:ping)? up with|round(?:ing)? (?:it |things )?off with|"
  + "open(?:ing)? with|lead(?:ing)? off with|get(?:ting)? (?:going|started) with|carry(?:ing)? on with|continu(?:e|ing) with|"
  + "rolling into|transition(?:ing)? (?:in)?to|heading (?:over )?to|head over to|jump(?:ing)? into|dive into|get into|"
  + "follow(?:ing)?(?: that| this| it| these)?(?: up)?(?: with)?|followed by|after that|then|and then|then it's|superset(?:ting)?(?: that| this| it| these)?(?: with)?|pair(?:ing|"
  + "ed)?(?: that| this| it| these)?(?: up)?(?: with)?|"
  + "that's|that is|this is|this one is|this one's|these are|here we have|here is|here's|it is|it's|we've got|we have|we got|"
  + "you've got|there's|we're doing|we are doing|we'll do|we're gonna do|going to do|going to be doing|gonna do|gonna be|"
  + "going to be|we do|let's do|let's go|do|doing|for|back to|swap to|switch to|go to|go into|going into|hit|hitting|grab)"
  + "(?: (?:exercise|movement|move|one|up|thing|lift|stop|drill|stretch|pose|position|is|are|was|with|to|for|the|a|an|some|our|"
  + "your|my|over|at|cables?|machine|bench|floor|mat|rack|we have|we've got|we got|we're doing|we do|we are doing|doing|do|we'll do|going to be|gonna be|going to do|be|it's|"
  + "that's|another|called|classic|good|old|nice|simple|favourite|favorite|heavy|light|slow|we're|we|on|of|today|here|by|named|"
  + "known|as|so|just|set|sets|\\d+|ten|eight|twelve|fifteen|twenty|um|uh|little|few|big|standard|basic|regular|go|going|you|"
  + "you're|you'll|in|out|circuit|session|workout|round|list|lot|lineup|menu))*|^)$",
);
const STRONG = new RegExp(String.raw`\b(?:${[
  String.raw`off with|away with|(?:one|two|three|four|five|six|seven) is|block|main|over to|next|first|second|third|fourth|fifth`,
  String.raw`sixth|last|final|finally|number|exercise|station|moving|move on|moves? into|onto|on to|straight into|time for|called`,
  String.raw`finish\w*|start\w*|begin\w*|kick\w*|end|ending|lastly|clos\w+|wrap\w*|round\w*|open\w*|lead\w*|getting|carry\w*`,
  String.raw`continu\w*|rolling|transition\w*|heading|head over|jump\w*|dive|get into|follow\w*|superset\w*|pair\w*|after that|then`,
].join("|")})\b`);

/** Further before it: "we start on all fours with the", "next roll onto your side for the". */
const JOINED = "(?: [\\w']+){0,7} (?:with|for|into|is|it's|to do|doing|do|got|have|called|comes|on to|onto)(?: [\\w']+){0,3}$";
const LOOSELY = new RegExp(`\\b(?:okay|alright|then|now|let's|move|moving|come|go|head|over)${JOINED}`);
const LOOSELY_STRONG = new RegExp(`\\b(?:next(?! to)|start(?:ing)?|begin(?:ning)?|and then we|then we|main thing|main lift|block|first up|first one|first|finish(?:ing)?|end(?:ing)?|last one|to finish|finally|lastly|kick(?:ing)?|clos(?:e|ing))${JOINED}`);

/** A sentence that opens with the turn and comes to the name within a few words: "last one, carries: farmer's carries". */
const OPENS = new RegExp(String.raw`^(?:(?:okay|ok|alright|all right|right|so|and|now|um|uh|well|good|great|nice|lovely) )*(?:${[
  String.raw`next(?! to| week| time| month)|first thing|(?:the )?(?:other|next|last|first|second|third) (?:one|thing|exercise|move|movement) is|first|second|third|fourth|fifth|last one|last thing|last up|last|final one`,
  String.raw`finally|lastly|number (?:one|two|three|four|five|six|seven)|exercise (?:one|two|three|four|five|six|seven)`,
].join("|")})(?: (?!week|time|month|year|video|episode)[\w']+){0,3} ?$`);
/** A sentence that opens with what is trained: "okay calves, just", "and then arms, so". */
const PART_OF_BODY = "(?:calves|legs|arms|abs|core|shoulders?|chest|back|glutes?|bum|biceps|triceps|hamstrings?|quads|belly|stomach|upper body|lower body|hinge|pull(?:ing)?|push(?:ing)?|press(?:ing)?|carr(?:y|ies)|grip)";
const TOPIC = new RegExp(`^(?:(?:okay|ok|alright|right|so|and|now|then|next|good|great|nice|lovely|done|for|the|some|a|bit|little|of|on|to|something|last) )*${PART_OF_BODY}(?: (?:time|now|next|first|a|bit|just|so|it's|we|do|doing|with|is|are|then|i|have|got|and|for|the|them|these|this))* ?$`);
const ONLY_LEADS = new RegExp(String.raw`^(?:${[
  String.raw`(?:okay|ok|alright|all right|right|so|now|and|um|uh|well|the|a|an|our|your|some|yeah|cool|great|good|nice|perfect|lovely|down|up|on|onto|to|floor|mat|back|feet|knees|all|fours|over|here|turn|around|round|off|come|get|you|we're|we|go|standing|seated|lying|still|just|come on|let's)(?: |$)`,
].join("|")})+$`);
/** Right after it: "reverse lunges next", "and then it's squats, up next". */
const COMES_NOW = /^ ?(?:(?:are|is|come|comes) )?(?:next(?! (?:week|time|to|month|year|video|episode|door|room))|up next|now(?! (?:that|you|we|i))|time\b|first(?! (?:time|week|thing))|then(?= (?:so|okay|right|it's|three|four|five|with|for|on)\b|$)|to (?:start|begin|finish|close)\b)/;

/** How the words before a name in its sentence introduce it: 0 not, 1 weakly ("we have"), 2 strongly ("next up"). */
export function introduction(before: string, after = ""): 0 | 1 | 2 {
  if (COMES_NOW.test(after)) return 2;
  const near = before.split(" ").filter((word) => word !== "").slice(-9).join(" ");
  if (LOOSELY_STRONG.test(near) || OPENS.test(before)) return 2;
  for (let words = near.split(" "), at = 0; at < words.length; at += 1) {
    const match = INTRODUCES.exec(words.slice(at).join(" "));
    if (match && match.index === 0 && match[0] !== "") return STRONG.test(match[0]) ? 2 : 1;
  }
  if (TOPIC.test(before)) return /^(?:okay|ok|alright|right|and then|then|now|next|done)\b/.test(before) ? 2 : 1;
  if (LOOSELY.test(near)) return 1;
  return near === "" || ONLY_LEADS.test(near) ? 1 : 0;
}

/** Named in passing: other days, other exercises it resembles or replaces, what it is good for. */
const PASSING = new RegExp(
  "\\b(?:last (?:week|time|month|year|video|episode|session|friday|monday|tuesday|wednesday|thursday|saturday|sunday)|"
  + "yesterday|the other day|next (?:week|time|month|video|episode|session)|instead of|rather than|unlike|similar to|same as|"
  + "the same way as|just like|as if|as in|like (?:a|an|the|in|you would|your|we did|with)|used to|used for|carr(?:y|"
  + "ies) over to|transfers? to|helps? (?:with |your |you )?|good for|great for|improves? (?:your )?|swap(?:ping)? (?:it |this |"
  + "that |out )?(?:for|with)?|alternative|substitute|variation of|version of|progression (?:to|from)|regression|"
  + "if you (?:can't|cannot|don't|hate|love|prefer|struggle|find|know|only|have)|can't do|cannot do|not (?:a|an|the|like a|"
  + "doing)|isn't (?:a|an)|don't (?:do|like|turn)|turns? (?:it |this |that )?into|becomes?|later|coming up|remember (?:the|when|"
  + "those|our)|i (?:love|hate|did|was|used|remember|always|failed|hurt|injured|once)|my (?:favourite|favorite|least)|he |she |"
  + "they |than|before (?:the|your|we)|from the|after (?:the|those|these|your|all)|ready for|prepare|save (?:it|some|that) for|"
  + "between|during|everyone|anyone|somebody|people|members?|ask(?:ed|ing)? (?:me )?(?:about|for)|question|whether|if i|if we|"
  + "do you|do i|why (?:we|i|you)|still do|talk(?:ing|ed)? about|video (?:on|about)|easier than|harder than|more than|"
  + "better than|heavier than|it's not|this is not|this isn't|that's not|without(?! (?:a|any) (?:rest|break|pause))|next to me|behind me|beside me|over there|"
  + "either|why (?:don't|do|not)|do you (?:ever )?(?:do|use)|can (?:i|you|we) (?:do|use|just)|should i do|could (?:i|have|do)|could've|"
  + "(?:was|were) (?:gonna|going to|about to|planning to)(?: do)?|wanted(?: to do)?|"
  + "(?:guy|man|woman|lady|bloke|girl|boy|kid|person|mate|dad|mum|mom|friend|brother|sister|client|coach|they|he|she)(?: is| was|"
  + "'s| who| that)?)(?: [\\w']+){0,3} ?$|\\b(?:with those|with these|on the(?! floor| mat| ground| wall| box| bench| step|"
  + " carpet| grass| cables?| machines?| bar| rack| platform| rings| rower| bike| sofa| ball| rope)|in the|of the|in a|on a|to the|at the top of|the bottom of|your)(?: [\\w']+)? ?$",
);
const TODAY_AGAIN = /\b(?:so today|but today|today|this time|this week|so now|but now|now|so we're|so let's|we're doing|we're going to|let's|okay|alright|next up|next)\b/g;
const AFTERWARDS = new RegExp(String.raw`^ ?(?:${[
  String.raw`last (?:week|time|month|year)|next (?:week|time)|yesterday|tomorrow|the other day`,
  String.raw`(?:is |are )?(?:too hard|not for you|taken|busy|station|machine is|rack|rocks are)|video|episode|numbers|record`,
  String.raw`pr|pb|background|as well if`,
].join("|")})\b`);

/** "So it's step-ups instead" is what is done; "if you can't, do step-ups instead" is not. */
const DONE_INSTEAD = /\b(?:it's|we're doing|i'm doing|we'll do|i'll do|we do|doing|going with|go with)(?: the| a| some)? ?$/;
const INSTEAD = /^ ?instead\b/;

/** Does the sentence only speak of the exercise, and not begin it? */
export function isInPassing(before: string, after: string, strength: number): boolean {
  let from = 0;
  for (const match of before.matchAll(TODAY_AGAIN)) from = match.index;
  const clause = before.slice(from).split(" ").slice(-9).join(" ");
  if (AFTERWARDS.test(after)) return true;
  if (INSTEAD.test(after)) return !DONE_INSTEAD.test(clause) || /\bif\b/.test(clause);
  const passing = PASSING.exec(clause);
  if (!passing) return false;
  // "after that", "for the": what introduces strongly overrules a loose word before it.
  return strength < 2 || /carr(?:y|ies) over|transfer|last (?:week|time|month|year|video|episode|session)|yesterday|instead|rather|next (?:week|time)|unlike|than|similar|used|ask|question/.test(passing[0]);
}

export const WARM_UP = new RegExp(String.raw`\b(?:${[
  String.raw`warm(?:ed|ing)?(?: it| this| things| ourselves| yourselves?| everything| you)?(?: all)?[ -]?up`,
  String.raw`get(?:ting)? (?:nice and )?warm|prep(?:are)? (?:the|your|our) (?:joints|body)|loosen(?:ing)? (?:up|off)`,
  String.raw`mobili[sz]e (?:the|your|our)|get the (?:blood|joints|body) (?:flowing|moving|going|ready)`,
  String.raw`mobility (?:first|to start|work to start)`,
].join("|")})\b`);
/** Spoken of, but not done here. */
export const NO_WARM_UP = new RegExp(String.raw`\b(?:${[
  String.raw`(?:already|i've|i have|i did|you've|you have|hope(?:fully)? you|assum\w+|after you|once you(?:'re|'ve)?|if you(?:'re|'ve| have| are| haven't)?|beforehand|before (?:you|watching|this video|starting|pressing)|skip\w*|no|not|without|done|did|last week|link|separate|own|another)\b(?:(?! we | let's | begin| start)[\w' ]){0,30}\b(?:warm\w*|mobili\w*)`,
  String.raw`warm[ -]?up (?:sets?|ones?|rounds?|video|is in|was|link|before|separately|on your own|reps?|with the empty|with just|(?:with |at |a |of )*(?:\d\S*|ten|fifteen|\w+ty|\w+ty \w+|a hundred)(?: \w+)? (?:kilos?|pounds?))`,
  String.raw`(?:as|that's|that is|it's|is|was|just|only) (?:a|my|one|another) warm[ -]?up|just to warm up|(?:one|two|three|another|second|third|last) (?:more )?warm[ -]?ups?`,
  String.raw`warm (?:and ready|now|already|enough)`,
].join("|")})\b`);
export const WARM_UP_OVER = new RegExp(String.raw`\b(?:${[
  String.raw`(?:that's|that is|so that's) (?:it for )?(?:the|our|your) (?:whole )?warm[ -]?up`,
  String.raw`warm[ -]?up(?:'s| is)? (?:all )?(?:done|over|finished)`,
  String.raw`(?:now )?(?:that )?(?:we're|you're|we are|you are|you should be|we should be|everyone's|everybody's) (?:all |nice and |good and |now |feeling )?(?:warm|warmed up|ready)`,
  String.raw`first (?:exercise|movement|move|lift|up|station|main|block|circuit|machine|part of the (?:workout|session))|main (?:part|workout|work|event|lift|set|session|course|block)`,
  String.raw`working sets?`,
  String.raw`(?:into|onto|on to|start|begin) (?:the|our|with the|with our) (?:\w+ )?(?:workout|work|session|circuit|exercises|strength|lifting|main|meat)`,
  String.raw`exercise (?:number )?(?:one|1)\b|number one|get (?:started|into it|going|stuck in)|get to work|down to business`,
  String.raw`let's lift|the real work|round one|station one|block one|(?:the way|how) (?:this|it) works|first off|first up|first one`,
  String.raw`(?:there are|we've got|we have|got) (?:\w+ )?(?:three|four|five|six|seven|eight|\d) (?:exercises|moves|movements|stations|blocks)`,
  String.raw`main (?:thing|lift|exercise)`,
].join("|")})\b`);

export const COOL_DOWN = new RegExp(String.raw`\b(?:${[
  String.raw`cool(?:ing|ed)?(?: it| this| things| ourselves| everything)?[ -]?down`,
  String.raw`(?:let's|we'll|we're going to|gonna|going to|we|to|and|time to|now) (?:stretch|do some stretch\w*|have a stretch|finish with (?:a |some )?(?:few )?stretch\w*|wind (?:it |things )?down|have a quick stretch|bring (?:it|everything|the heart rate|your heart rate|things) down)(?: (?:it|this|that|things|everything))?(?: all)?(?: out| off| down)?`,
  String.raw`(?:finish|end) (?:off |up )?with (?:a |some |a few |a bit of )?(?:easy |gentle |quick )?(?:stretch\w*|mobility|breathing)`,
  String.raw`(?:just |then |have |do )a (?:few |quick |little |short |bit of |couple of )+stretch\w*|stretch (?:the|your) (?:\w+ )?(?:\w+ and (?:the |your )?)?\w+(?: \w+){0,4} (?:each|per|a) (?:side|leg|arm)`,
  String.raw`stretch(?:es|ing)? to (?:finish|end)|bring the heart rate down|bring your heart rate down`,
].join("|")})\b`);
/** An order to stretch for a time; the time may follow in the next sentence. */
export const STRETCHES = /^(?:(?:so|okay|ok|and|right|finally|lastly|then|now|just) )+stretch (?:out )?(?:the|your) .*\b(?:seconds|minutes?|breaths|each side|a side)\b/;
export const NOT_COOL_DOWN = new RegExp(String.raw`\b(?:${[
  String.raw`later|at the end we|at the end of (?:the|this)|will be|don't skip|you can|if you|skip|before we|remember to|afterwards`,
  String.raw`in a bit|after (?:this|the|that)|feel|finish with stretching|in your own time|on your own`,
].join("|")})\b`);

export const CLOSING = new RegExp(String.raw`\b(?:${[
  String.raw`thank(?:s| you)(?: so much| very much| all| everyone| guys| again)?(?: for| everyone| so much| guys)|see you|see ya`,
  String.raw`i'll see|catch you|until (?:next|then)|till next|bye|take care|that's a wrap`,
  String.raw`that's (?:us|you|me|everyone) (?:done|finished)`,
  String.raw`that's (?:it|all|everything|that|the (?:whole |full |entire )?(?:session|workout|circuit|episode|video|lot))(?: folks| guys| everyone| team)?(?: (?:for|from) (?:today|this|me|the|us|now|our))`,
  String.raw`(?:that's|that is|and that's) (?:the (?:end|whole|session|workout|circuit|lot)|it we're done|it you're done|us done|a wrap|all we|all for)`,
  String.raw`we're (?:all )?(?:done|finished)(?: for today| here| with)?|you're (?:all )?(?:done|finished)(?: for today| with)?`,
  String.raw`subscribe|like button|hit like|let me know (?:in|how|what|if)|leave (?:me )?a comment|in the comments|comments below`,
  String.raw`next (?:week's|week|time|episode|video) (?:we|we'll|it's|i|i'll|is)|have a (?:good|great|lovely|wonderful)`,
  String.raw`enjoy the rest of|handout|well done (?:everyone|everybody|guys|team|you|for|today|on)`,
  String.raw`great (?:work|job|session) (?:everyone|everybody|guys|team|today)`,
  String.raw`good (?:work|job) (?:everyone|everybody|guys|team|today)|so to recap|to recap|quick recap`,
].join("|")})\b`);
export const SURE_CLOSING = new RegExp(String.raw`\b(?:${[
  String.raw`thank(?:s| you)[\w ]{0,14} for (?:watching|joining|training|coming|being|listening|tuning|following|sticking|hanging|working)`,
  String.raw`see you|see ya|catch you|until next time|till next time|bye|that's a wrap|subscribe`,
  String.raw`that's (?:it|all|everything) (?:for|from) (?:today|this|me|us)|next time`,
].join("|")})\b`);

export const GREETING = new RegExp(String.raw`\b(?:${[
  String.raw`hello|hi|hey|welcome|good (?:morning|afternoon|evening)|what's up|morning (?:everyone|everybody|all|folks)`,
  String.raw`how's it going|my name is|i'm your coach|today|in this (?:video|session|episode|workout)|this is episode`,
  String.raw`episode (?:\d|one|two|three|four|five|six|seven)`,
].join("|")})\b`);

/** What only the very last sentences may be taken for a farewell by. */
export const FAREWELL = new RegExp(String.raw`\b(?:${[
  String.raw`thank you|thanks|see you|enjoy|cheers|peace|goodbye|good luck|well done|take care|until|write to me|tell me|let me know`,
  String.raw`good night|sleep well|have fun|stay (?:strong|safe|warm|well)`,
].join("|")})\b`);

/** A sentence that only leads over: "okay", "so next up", "alright moving on". */
export const LEADS_OVER = new RegExp(String.raw`^(?:${[
  String.raw`(?:okay|ok|alright|all right|right|so|now|and|then|next|next up|up|good|great|nice|cool|perfect|lovely|moving on|on we go|let's move on|let's go|here we go|we|one|first|last|um|uh|well|yeah|brilliant|exercise|movement|done|that's|it|number|two|three|four|five|six|let's|keep|going|carry|on|guys|everyone|we're|moving|we'll|move)(?: |$)`,
].join("|")})+$`);
