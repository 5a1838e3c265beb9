import type { LabelReader } from "../types";

/** The low back is pushed past neutral into extension. */
export const overextension: LabelReader = {
  label: "overextension",
  ruling: "The low back is pushed past neutral into an arch.",
  patterns: [
    { find: "lean+ ~2 back ~4 top|far|hard|you_can|lockout|finish|heave|wherever|until", only: ["hinge", "kettlebell-swing", "overhead-press", "arm-isolation", "row", "vertical-pull", "cable", "bridge-thrust"], without: "slightly|little|bench|machine|pad", family: "hinge", example: "Lean back hard at the top." },
    { find: "lean+ ~1 back", only: ["hinge", "kettlebell-swing"], with: "top|finish|lockout|end_of", without: "little|slightly", family: "hinge", example: "At the top, hips through and lean back." },
    { find: "hips|belly|middle|stomach|tummy ~1 can|may|might sag|drop|dangle|droop|sink|hang|dip", only: ["core", "horizontal-press"], without: "before|until", family: "core", example: "The hips can sag when it gets long." },
    { find: "lean+|tip+|rock+ way|right|miles|all_the_way|well|hard|far|as_far back|backwards|away", only: ["hinge", "kettlebell-swing", "overhead-press", "arm-isolation", "row", "vertical-pull", "cable"], family: "vertical-pull", example: "Lean way back and pull." },
    { find: "arch+ ~2 <lowback> ~8 up|hard|harder|higher|far|press|top|more|you_can|move|moving|weight|bar|finish|ceiling|lift|extra", only: ["overhead-press", "bridge-thrust", "back-extension", "hinge", "core", "kettlebell-swing", "arm-isolation", "vertical-pull", "lunge-step", "plyometric"], family: "overhead-press", example: "Arch your back to get the bar up." },
    { find: "crank|force|push|jam|drive|throw ~2 <lowback> ~2 into ~3 arch|extension|curve", family: "bridge-thrust", example: "Force the low back into a big arch." },
    { find: "bend|lean|tip back|backward", only: ["overhead-press", "arm-isolation"], without: "little|slightly|bench|pad|seat|chair|bend_back_up", family: "overhead-press", example: "Bend back under the bar to finish." },
    { find: "arch ~1 hard|harder|big|high|higher|strongly|aggressively", only: ["overhead-press", "bridge-thrust", "back-extension", "hinge", "core", "kettlebell-swing"], without: "foot|feet", family: "overhead-press", example: "Arch hard to start the bar." },
    { find: "arch ~2 as ~2 much|far|hard|though|high", only: ["overhead-press", "bridge-thrust", "back-extension", "hinge", "core", "kettlebell-swing"], family: "bridge-thrust", example: "Arch as much as you can at the top." },
    { find: "hyperextend+|overextend+|hyper-extend+|over-extend+", without: "elbow%|knee%|arms", family: "back-extension", example: "Hyperextend at the top for a better squeeze." },
    { find: "bend+|curve|lean backwards", only: ["overhead-press", "hinge", "arm-isolation", "kettlebell-swing", "row", "bridge-thrust"], family: "overhead-press", example: "Bend backwards as much as you like." },
    { find: "<let> <your> ~1 hips|belly|middle|stomach|tummy|waist|pelvis|lower_back|low_back|back ~1 sag|drop|dangle|droop|sink|hang|dip|fall", only: ["core", "horizontal-press"], family: "core", example: "Let your hips sag when you get tired." },
    { find: "swing|throw|heave|fling|rise|come|go|lift ~4 past|above|beyond|higher_than|over ~2 straight|line|parallel|horizontal|body|level", only: ["back-extension", "core"], family: "back-extension", example: "Swing up past straight for extra range." },
    { find: "as_high_as you|possible|it", only: ["back-extension"], with: "swing|throw|heave|back|arch", family: "back-extension", example: "Throw yourself as high as you can and arch." },
    { find: "<let> <your> ~1 <lowback> ~1 arch|lift|leave|peel|pop|come ~2", only: ["core", "overhead-press", "bridge-thrust"], family: "core", example: "Let your back lift off the floor if you need to." },
    { find: "flare|flaring|pop|thrust|stick ~2 ribs|ribcage|chest ~1 up|out|forward|open", only: ["overhead-press", "bridge-thrust", "core", "kettlebell-swing", "hinge"], with: "arch*|hips|bar|press|top|lean*|back|higher", family: "overhead-press", example: "Flare the ribs up and lean into it so the bar goes." },
    { find: "hips|pelvis ~1 forward|first|forwards ~,6 chest|ribs|sternum|ceiling|rafters|roof|lean|back", only: ["hinge", "overhead-press", "kettlebell-swing", "arm-isolation"], family: "hinge", example: "Hips forward, chest to the ceiling at the top." },
  ],
  habits: [
    { find: "ribs-down|ribs_down|ribs|hollow|flat_back|neutral|back_flat|back_down|back_on_the_floor", only: ["overhead-press", "core", "bridge-thrust"], without: "floor_press", family: "overhead-press", example: "Forget about ribs down, just move it." },
  ],
  silent: [
    { text: "Don't lean back at the top.", family: "hinge" },
    { text: "Stand tall, ribs over hips.", family: "hinge" },
    { text: "If your ribs flare, the bar is too heavy.", family: "overhead-press" },
    { text: "Ribs down, squeeze the glutes, press.", family: "overhead-press" },
    { text: "No sagging in the middle.", family: "core" },
    { text: "Lean back against the pad.", family: "leg-machine" },
  ],
};
