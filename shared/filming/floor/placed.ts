import type { Mark } from "../marks";
import type { Stand } from "../types";
import type { BlockFloor, FloorMark } from "./types";

/** A mark with its place on the floor; undefined for a mark of another block. */
export const floorMark = (floor: BlockFloor, mark: Mark): FloorMark | undefined => floor.marks.find(({ mark: key }) => key === mark.key);

/** Where the camera really stands for a mark: where the coach put it, else as it is framed. */
export const standOf = (floor: BlockFloor, mark: Mark): Stand => floorMark(floor, mark)?.stand ?? mark.stand;
