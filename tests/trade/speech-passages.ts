/**
 * Coaching passages that nothing was fitted on, and how a coach says them, written out by hand. The synthesiser is handed `said`,
 * our engine `written`, so a figure read wrongly shows as wrong seconds.
 */
export interface Passage {
  readonly written: string;
  /** Left out where the words are said as they are written. */
  readonly said?: string;
}

/** The sentences that one pace factor is fitted on; not among the passages. */
export const PACE_SENTENCES: readonly string[] = [
  "Good morning, and welcome back to the small room at the harbour.",
  "Put the weight down between sets, shake out your hands, and write the number in your notebook.",
  "We will keep everything simple today, because simple things are the ones you still do in winter.",
];

export const PASSAGES: readonly Passage[] = [
  { written: "Stand in the middle of the mat with your feet under your hips. Let your arms hang. Breathe out slowly, and feel the ribs come down." },
  { written: "This is where most people rush. Don't. The bottom of the squat is a place to visit, not a place to bounce out of." },
  { written: "Hold the bell by its horns, close to the breastbone, and keep the elbows pointing at the floor. If it drifts away from you, it gets heavier, and your back pays for it." },
  { written: "Grip the handle, pull your shoulder away from your ear, and row towards the hip. Pause. Then let the arm get long again without letting the shoulder roll forward." },
  { written: "You have three more. Two more. Last one, and set it down gently." },
  { written: "The half-kneeling press asks for balance before it asks for strength, so squeeze the back glute, keep the front shin vertical, and wait until you stop wobbling before you start the first repetition." },
  { written: "Nobody is watching the number on the plate except you, and honestly, you will have forgotten it by Thursday." },
  { written: "Rest here. Drink something. When your breathing is quiet enough to talk in whole sentences, you are ready for the next round." },
  { written: "Carry the weights as if you were carrying somebody else's shopping: politely, quietly, and without swinging them into the furniture." },
  { written: "If you feel a sharp pain in the front of the shoulder, stop the set, put the weight down, and ask a physiotherapist before you press overhead again." },
  { written: "Walk to the end of the room, turn around slowly, and walk back. That is one trip." },
  { written: "Anti-rotation means exactly what it says: the cable tries to turn you, and you politely decline. Press the handle straight out, count to two, and bring it home." },
  { written: "Your heels stay down, your chest stays proud, your knees travel over your toes. That's it. That's the whole exercise." },
  { written: "I filmed this on a Tuesday at six in the evening, which explains the queue behind me, and it also explains why I am doing the rows on a borrowed bench." },
  { written: "Short steps, tall spine, loose jaw. The grip will complain first, because it always does, and you are allowed to put the bells down before it gives up completely." },
  { written: "What should you feel? Mostly the outside of your hip, and a little of the thigh. What shouldn't you feel? Your lower back." },
  { written: "Begin on your hands and knees. Reach the opposite arm and leg away from each other, hold them there while you exhale, and return with control. Switch sides." },
  { written: "Coming back after a long break is a strange feeling. The mind remembers every weight, the tendons remember nothing, and the sensible thing is to believe the tendons." },
  { written: "Thank you for training with me. Leave the room tidier than you found it, and I will see you on the trail." },
  { written: "Lower the dumbbells until your elbows are level with the bench, keep your wrists stacked over your forearms, and press up in a gentle arc." },
  { written: "Today's warm-up is deliberately boring. Ankle circles, knee hugs, hip hinges with a broomstick, thoracic rotations, and a brisk walk round the block if the weather allows it." },
  { written: "Think of your pelvis as a bucket of water that you would rather not spill. Tuck it too far and you spill backwards; arch too much and it pours down your shins." },
  { written: "Choose a load that leaves two good repetitions in the tank. Not two ugly ones. Two that you'd be happy to show your grandmother." },
  { written: "Inhale on the way down. Exhale on the way up. Repeat until the timer rings." },
  // figures, set lines, units
  {
    written: "Goblet squat: 3x8-10 @ 22.5 kg, tempo 3-1-1-0, rest 90 s.",
    said: "Goblet squat: three sets of eight to ten at twenty-two point five kilos, tempo three one one zero, rest ninety seconds.",
  },
  {
    written: "We start with 2 ramp-up sets, 10 reps with 8 kg and 6 reps with 14 kg, then 3 working sets of 8 at RPE 7-8.",
    said: "We start with two ramp-up sets, ten reps with eight kilos and six reps with fourteen kilos, then three working sets of eight at R P E seven to eight.",
  },
  {
    written: "Hold for 30 s on the left, 30 s on the right, and rest for 1:15 min in between.",
    said: "Hold for thirty seconds on the left, thirty seconds on the right, and rest for one minute fifteen in between.",
  },
  {
    written: "Carry 2x24 kg for 40 m, 4 times, with about 60-75 s between the trips.",
    said: "Carry two times twenty-four kilos for forty metres, four times, with about sixty to seventy-five seconds between the trips.",
  },
  {
    written: "Last week I did 3 x 12 with 17.5 kg, this week it is 20 kg, an increase of 14%, and that is plenty.",
    said: "Last week I did three sets of twelve with seventeen point five kilos, this week it is twenty kilos, an increase of fourteen percent, and that is plenty.",
  },
  {
    written: "Set the bench at 30-45°, lie face down, and pull for 4x10, 2 RIR on every set except the 4th.",
    said: "Set the bench at thirty to forty-five degrees, lie face down, and pull for four sets of ten, two reps in reserve on every set except the fourth.",
  },
  {
    written: "The whole session took 52 min, from 18:05 to 18:57, including the 1st set that I forgot to film.",
    said: "The whole session took fifty-two minutes, from eighteen oh five to eighteen fifty-seven, including the first set that I forgot to film.",
  },
  {
    written: "At 80% of your 1RM you should manage 7-9 reps; if you get 12, it wasn't 80%.",
    said: "At eighty percent of your one rep max you should manage seven to nine reps; if you get twelve, it wasn't eighty percent.",
  },
  {
    written: "Step up on a 40 cm box, 8/side, tempo 2-0-1-1, and hold a 12 kg KB in the opposite hand.",
    said: "Step up on a forty centimetre box, eight per side, tempo two zero one one, and hold a twelve kilo kettlebell in the opposite hand.",
  },
  {
    written: "Row 500 m in about 2:10, or walk 1.5 km at 5.5 km/h if rowing bothers your knees.",
    said: "Row five hundred metres in about two ten, or walk one point five kilometres at five point five kilometres an hour if rowing bothers your knees.",
  },
  {
    written: "Drop the weight by 5-10% when the bar slows down, e.g. from 60 kg to 55 kg, and keep the reps at 6.",
    said: "Drop the weight by five to ten percent when the bar slows down, for example from sixty kilos to fifty-five kilos, and keep the reps at six.",
  },
  {
    written: "Take 15 lb if your dumbbells are in pounds, which is just under 7 kg, and do 2-3 rounds of 12 L/R.",
    said: "Take fifteen pounds if your dumbbells are in pounds, which is just under seven kilos, and do two to three rounds of twelve left and right.",
  },
];
