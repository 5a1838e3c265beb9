import type { LabelReader } from "../types";

/** Breath held for longer than one hard repetition. */
export const breathHold: LabelReader = {
  label: "breath-hold",
  ruling: "The breath is held for longer than one hard repetition.",
  patterns: [
    { find: "hold|holding|keep|trap|lock|save|bottle <your> ~2 <breath> ~2 in? ~6 <wholeset>", without: "stretch|comfortable|relax*|let_it_out|let_it_leak|just_for_the|just_for_a|only_for_the", family: "squat", example: "Hold your breath for the whole set." },
    { find: "hold|holding <your> <breath> ~1 while|as|throughout|during", only: ["core", "carry", "cooldown-stretch", "mobility-warmup"], family: "core", example: "Hold your breath while you plank." },
    { find: "breath and hold it ~6 <wholeset>", family: "squat", example: "Take a breath and hold it until the last rep." },
    { find: "hold it|them in|there? ~1 until|till|through|for ~8 set|reps|end|minute|seconds|lap|say|done|last", with: "breath|inhale|air|lungs|breathe", family: "core", example: "Big inhale, then hold it until the end." },
    { find: "one|single|a|1 ~1 breath|lungful|gulp|inhale ~3 for|lasts|covers|does|gets|per|to ~4 set|reps|lap|minute|hold|whole|lot|round|seconds", family: "squat", example: "One breath for the whole set, that is all you get." },
    { find: "don't|dont|do_not|never|no|without|stop|not|nobody|cannot|can't|not_allowed_to ~3 breathe|breathing|breathes|exhale|exhaling|inhale|breath|air ~5 until|till|before|for|while|as_you|whole|entire|during|throughout|set|mid-set|mid-lap|rep|reps|hold|minute|seconds", as: "flat", without: "hold*|out_of_breath|short_of|forget|lose|catch|trouble|hard_to|if_you", family: "core", example: "No breathing until the timer stops." },
    { find: "breathe|breathing|air|oxygen|exhale|inhale ~4 later|afterwards|after|at_the_end|when_you're_done|when_it's_over|when_we're_done|can_wait|is_for_later|once_it's_over|once_you're_done|when_the_set_is_over", without: "once_the_hard", as: "flat", family: "carry", example: "You can breathe afterwards." },
    { find: "stay|keep|remain ~3 empty|full|shut|sealed|closed ~4 whole|entire|until|till|seconds|minute%|set|lap|rep%", with: "lungs|breath|breathe|air|lips|mouth|exhale|inhale", family: "cooldown-stretch", example: "Breathe out and stay empty until the minute is up." },
    { find: "lips|mouth|lungs|throat|airway ~2 sealed|shut|closed|clamped|locked|zipped", with: "until|till|whole|entire|set|seconds|minute%|purple|red|blue|lap|all|rep%", as: "fault", family: "squat", example: "Lips sealed until the last rep." },
    { find: "shut|close|seal|zip|clamp <your> ~1 mouth|lips|lungs|valve|throat|airway", with: "until|till|whole|entire|set|seconds|minute%|purple|lap|all|rep%", family: "carry", example: "Seal your lips for the entire lap." },
    { find: "breathing|respiration|breath is ~1 suspended|forbidden|banned|cancelled|off|for_wimps|not_allowed|optional|overrated", as: "flat", family: "leg-machine", example: "Breathing is banned until rep ten." },
    { find: "until|till your|the face turns|goes|is red|purple|blue|crimson|beetroot", family: "core", example: "Hold on until your face turns purple." },
  ],
  habits: [
    { find: "breathe|breathing|exhaling|breathing_out", without: "hold*", family: "carry", example: "Don't bother with breathing on the way back." },
  ],
  silent: [
    { text: "Don't hold your breath.", family: "core" },
    { text: "Breathe out on the way up.", family: "squat" },
    { text: "Brace, then let the air go once the hard part is over.", family: "squat" },
    { text: "Take a minute to get your breath back.", family: "general" },
    { text: "Hold the stretch, not your breath, for thirty seconds.", family: "cooldown-stretch" },
    { text: "Never hold your breath for the whole set.", family: "squat" },
    { text: "Don't forget to breathe during the set.", family: "squat" },
  ],
};
