import fc from "fast-check";

/**
 * One seed for every property, so that a run says the same twice; a failure prints it with the counterexample, which then becomes
 * a case of its own. SEED=n searches elsewhere.
 */
fc.configureGlobal({ seed: Number(process.env.SEED ?? 20_261_127) });
