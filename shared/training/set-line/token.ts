/** One piece of a set line. `start` and `end` are characters of the text as typed. */
export interface Token {
  /** A clock is minutes and seconds with a colon, such as 1:30. */
  readonly kind: "number" | "clock" | "word" | "sign";
  /** Lower case; signs that mean the same are one sign: × is x, an en dash is -. */
  readonly text: string;
  /** Of numbers; 0 otherwise. */
  readonly value: number;
  readonly start: number;
  readonly end: number;
  /** White space, or the start of the line, stands before it. */
  readonly spaced: boolean;
}
