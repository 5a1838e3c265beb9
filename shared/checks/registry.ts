import type { Rule } from "./define-rule";

/** Every rule, in the order they are explained to people: structure, dose, words, film, publishing. */
export const RULES: readonly Rule[] = [];
