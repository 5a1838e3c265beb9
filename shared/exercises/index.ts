/** What is known about exercises: the catalogue and how to find one in it. */
export * from "./types";
export { EXERCISES } from "./catalogue";
export { exerciseById, exercisesMentioned, exercisesOfFamily, findExercise, searchExercises } from "./lookup";
export { jointsIn } from "./joints";
export { exerciseInBlock, isSameStation, stationOf } from "./of-block";
