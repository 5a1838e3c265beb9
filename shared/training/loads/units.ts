/** Kilograms in a pound, exactly. @source International yard and pound agreement, 1959 (from memory) */
const KG_PER_LB = 0.45359237;

/** Kilograms to pounds, not rounded. */
export const kgToLb = (kg: number): number => kg / KG_PER_LB;

/** Pounds to kilograms, not rounded. */
export const lbToKg = (lb: number): number => lb * KG_PER_LB;
