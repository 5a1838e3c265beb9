import type { Matrix } from "./matrix";
import type { BothWays, Linear, Recurrent } from "./network";

/** What a listener has learned, as it is stored and as it is used. */

/** A matrix on paper: whole numbers from -127 to 127 in base64, and for each row what one of them is worth (32-bit floats in base64). */
interface StoredMatrix {
  readonly rows: number;
  readonly columns: number;
  readonly values: string;
  readonly scale: string;
}

interface StoredLinear {
  readonly weight: StoredMatrix;
  readonly bias: string;
}

interface StoredRecurrent {
  readonly input: StoredLinear;
  readonly state: StoredMatrix;
}

const TABLES = ["word", "klass", "size", "pause", "begins", "mark", "name", "field", "attendAway", "pointerAway", "ownKind", "ownOffset", "ownAway"] as const;
const SINGLE = ["told", "guessed", "ownFigure", "ownExercise"] as const;
const PAIRS = ["role", "start", "turn", "attend", "goal", "pointer", "owner", "again"] as const;
const LISTS = ["words", "ids", "goals", "classes", "fields", "kinds"] as const;

type Shape<M, L, R> = Readonly<Record<(typeof TABLES)[number], M> & Record<(typeof SINGLE)[number], L> & Record<(typeof PAIRS)[number], readonly [L, L]> & { layers: readonly (readonly [R, R])[] }>;

type Lists<T> = Readonly<Record<(typeof LISTS)[number], T>>;

export type StoredListener = Shape<StoredMatrix, StoredLinear, StoredRecurrent> & Lists<readonly string[]>;
export type Listener = Shape<Matrix, Linear, Recurrent> & { /** The number of each entry of a list. */ readonly numbers: Lists<ReadonlyMap<string, number>> };

const bytesOf = (text: string): Uint8Array => Uint8Array.from(atob(text), (char) => char.charCodeAt(0));
const floatsOf = (text: string): Float32Array => new Float32Array(bytesOf(text).buffer);

function matrixOf({ rows, columns, values, scale }: StoredMatrix): Matrix {
  const whole = new Int8Array(bytesOf(values).buffer);
  const worth = floatsOf(scale);
  const out = new Float32Array(whole.length);
  for (let row = 0; row < rows; row += 1) for (let at = row * columns; at < (row + 1) * columns; at += 1) out[at] = (whole[at] as number) * (worth[row] as number);
  return { rows, columns, values: out };
}

const linearOf = ({ weight, bias }: StoredLinear): Linear => ({ weight: matrixOf(weight), bias: floatsOf(bias) });
const recurrentOf = ({ input, state }: StoredRecurrent): Recurrent => ({ input: linearOf(input), state: matrixOf(state) });

const each = <K extends string, T>(keys: readonly K[], make: (key: K) => T): Record<K, T> => Object.fromEntries(keys.map((key) => [key, make(key)])) as Record<K, T>;
const both = <A, B>([first, second]: readonly [A, A], make: (one: A) => B): readonly [B, B] => [make(first), make(second)];

export function unpackedListener(stored: StoredListener): Listener {
  return {
    ...each(TABLES, (key) => matrixOf(stored[key])),
    ...each(SINGLE, (key) => linearOf(stored[key])),
    ...each(PAIRS, (key) => both(stored[key], linearOf)),
    layers: stored.layers.map((layer): BothWays => both(layer, recurrentOf)),
    numbers: each(LISTS, (key) => new Map(stored[key].map((name, at) => [name, at]))),
  };
}
