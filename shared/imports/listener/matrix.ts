/** Rows of numbers one after the other in one array. */

/** @param values - rows of `columns` numbers */
export interface Matrix {
  readonly rows: number;
  readonly columns: number;
  readonly values: Float32Array;
}

/** Rows as a matrix. @param columns - told where there may be no rows */
export const matrixFrom = (rows: readonly (readonly number[])[], columns = rows[0]?.length ?? 0): Matrix => ({ rows: rows.length, columns, values: Float32Array.from(rows.flat()) });

/** Matrices of as many rows side by side. */
export function beside(...parts: readonly Matrix[]): Matrix {
  const rows = parts[0]?.rows ?? 0;
  const columns = parts.reduce((sum, part) => sum + part.columns, 0);
  const values = new Float32Array(rows * columns);
  let at = 0;
  for (const part of parts) {
    for (let row = 0; row < rows; row += 1) values.set(part.values.subarray(row * part.columns, (row + 1) * part.columns), row * columns + at);
    at += part.columns;
  }
  return { rows, columns, values };
}

/** Some rows of a matrix, in the order asked for. */
export function rowsOf({ columns, values }: Matrix, rows: readonly number[]): Matrix {
  const out = new Float32Array(rows.length * columns);
  rows.forEach((row, at) => out.set(values.subarray(row * columns, (row + 1) * columns), at * columns));
  return { rows: rows.length, columns, values: out };
}

export const rowAt = ({ columns, values }: Matrix, row: number): Float32Array => values.subarray(row * columns, (row + 1) * columns);

/** Two matrices of the same shape added up. */
export const added = ({ values, ...shape }: Matrix, other: Matrix): Matrix => ({ ...shape, values: values.map((value, at) => value + (other.values[at] as number)) });
