/**
 * Syllables of trade words, and of everyday words the general counter gets wrong. As said in a gym: "glutes" 1, "every" 2.
 * Singular; plurals and possessives with a plain s follow by themselves.
 */
export const TRADE_WORDS: Readonly<Record<string, number>> = {
  // not in the general dictionaries
  kettlebell: 3, deadlift: 2, glute: 1, isometric: 4, eccentric: 3, concentric: 3, abdominal: 4, oblique: 2, bodyweight: 3,
  pulldown: 2, pushdown: 2, rotator: 3, deltoid: 2, quadruped: 3, antirotation: 5, antirotational: 6, plyometric: 4, underhand: 3,
  overhand: 3, gastrocnemius: 5, mobilisation: 5, hyperextension: 5, amrap: 2, emom: 2, hiit: 1, scapula: 3,
  gluteus: 3, soleus: 3, psoas: 2, squeaky: 2, achilles: 3,
  // a silent e inside
  safety: 2, everything: 3, everybody: 4, everyday: 3, everyone: 3, every: 2, evening: 2, eyebrow: 2, timeout: 2, timeline: 2, baseline: 2, guideline: 2,
  lifetime: 2, framework: 2, filename: 2, homepage: 2, pipeline: 2, therefore: 2, vegetable: 3, chocolate: 2, interesting: 3, several: 2,
  temperature: 3, recovery: 4, elsewhere: 2, moreover: 3, ninety: 2, pigeon: 2, surgeon: 2, technique: 2, unique: 2, fatigue: 2, dictionary: 4,
  squeeze: 1, squeezing: 2, squeezed: 1, prone: 1, prove: 1, proof: 1, probe: 1, else: 1, steer: 1, peer: 1, tier: 1, axe: 1, browse: 1,
  bronze: 1, false: 1, torque: 1, bye: 1, goodbye: 2, collapse: 2, sequence: 2, frequency: 3, frequently: 3, toddler: 2,
  // vowels said apart
  area: 3, idea: 3, fluid: 2, ruin: 2, science: 2, scientific: 4, theory: 2, poem: 2, poet: 2, diabetes: 4, linear: 3, experience: 4,
  coordinate: 4, association: 5, heroic: 3, european: 4, element: 3, algorithm: 4, mechanism: 4, reactive: 3, coexist: 3, naive: 2,
  tired: 2, tire: 1, tiredness: 3, entire: 3, entirely: 4, fired: 1, sided: 2, whoever: 3, wobbly: 3,
  // the i that is only a y
  million: 2, billion: 2, trillion: 2, brilliant: 2, familiar: 3, unfamiliar: 4, cushion: 2, union: 2, australian: 3, italian: 3, brazilian: 3, reptilian: 3, civilian: 3, consequence: 3, behavior: 3, behaviour: 3, automatically: 5,
  basically: 3, specifically: 4, dynamically: 4,
  // exceptions to the endings
  wicked: 2, naked: 2, rugged: 2, ragged: 2, jagged: 2, crooked: 2, ache: 1, aches: 1, headaches: 2, backaches: 2,
  // letters said by name
  w: 3,
};
