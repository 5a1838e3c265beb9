/**
 * Exercises that the catalogue does not hold, by the names coaches use. They become blocks without a catalogue entry.
 * Common practice, no source.
 */
export const BEYOND: readonly string[] = [
  "burpee", "thruster", "dumbbell thruster", "kettlebell thruster", "jumping jack", "star jump", "high knees", "butt kick", "russian twist", "turkish get-up", "get-up",
  "kettlebell snatch", "dumbbell snatch", "power clean", "hang clean", "clean and press", "clean and jerk", "push jerk", "kettlebell halo", "halo", "kettlebell windmill", "windmill",
  "bicycle crunch", "flutter kick", "scissor kick", "toe tap", "heel tap", "v-up", "sit-up", "reverse crunch", "knee tuck", "plank jack", "plank shoulder tap", "shoulder tap",
  "renegade row", "upright row", "high pull", "gorilla row", "shrug", "front raise", "y raise", "preacher curl", "concentration curl", "spider curl", "reverse curl",
  "pistol squat", "cossack squat", "sumo squat", "overhead squat", "hindu squat", "sissy squat", "curtsy lunge", "lunge jump", "jump lunge", "split jump", "lateral step-up", "lateral shuffle",
  "monster walk", "clamshell", "donkey kick", "fire hydrant", "hip airplane", "frog pump", "glute ham raise", "reverse hyperextension",
  "bear crawl", "crab walk", "duck walk", "lizard stretch", "downward dog", "upward dog", "cobra stretch", "pigeon stretch", "pigeon pose", "thread the needle", "world's greatest stretch", "couch stretch",
  "ninety ninety hip switch", "hip switch", "shin box", "cat stretch", "frog stretch", "shoulder dislocate", "shoulder pass-through", "wall ball", "battle rope", "rope slam", "skipping rope", "jump rope", "skipping",
  "kettlebell press", "kettlebell row", "kettlebell front squat", "double kettlebell press", "around the world", "around the body pass", "figure eight", "goblet reverse lunge", "goblet lunge", "tricep kickback", "chest fly", "dumbbell fly", "dumbbell pullover",
  "landmine squat", "landmine rotation", "pike push-up", "diamond push-up", "decline push-up", "knee push-up", "spiderman push-up", "plank to push-up", "plank up-down", "superman pull",
  "tibialis raise", "toe raise", "hip march", "standing march", "sled pull", "sled drag", "rack pull", "snatch grip deadlift", "deficit deadlift", "hip flexor march", "side bend",
  "band walk", "lateral band walk", "glute kickback", "hip hinge", "leg lift", "side leg raise", "reverse plank", "crab reach", "l-sit", "toes to bar", "muscle-up", "handstand hold", "wall walk",
];
