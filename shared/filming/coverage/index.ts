/** The coverage plan: which mark films which set, with one camera or two. */
export * from "./types";
export { planCoverage } from "./solve";
export { coverageCost, coverageViolations } from "./verify";
export { coverageWarnings, readCoverageProblem, type CoverageRead } from "./read";
export { remedyFor, type CoverageNames, type Remedy } from "./remedy";
export { doneThrough, replan, type CoverageChange, type CoverageDone, type Replanned } from "./replan";
