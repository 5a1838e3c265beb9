/**
 * The arrows of the house. A folder may import what stands to its left:
 * episode <- exercises <- training, filming, speech <- clocks <- checks, exports <- imports <- electron, renderer.
 */
const FLOORS = [
  ["episode"],
  ["exercises"],
  ["training", "filming", "speech"],
  ["shoot-plan"],
  ["checks", "exports", "session-report"],
  ["imports"],
];
/** Floors below that a folder does without. */
const NOT_USED = { imports: ["filming", "exports", "session-report"], "session-report": ["filming", "speech"] };

const within = (names) => `^shared/(${names.join("|")})/`;

const coreRules = FLOORS.flatMap((floor, level) =>
  floor.map((name) => ({
    name: `shared-${name}`,
    comment: `shared/${name} imports only the floors below it`,
    severity: "error",
    from: { path: within([name]) },
    to: {
      path: "^shared/",
      pathNot: [
        `^shared/${name}/`,
        ...FLOORS.slice(0, level).flat().filter((below) => !NOT_USED[name]?.includes(below)).map((n) => `^shared/${n}/`),
        ...(level === FLOORS.findIndex((floor) => floor.includes("checks")) ? ["^shared/clocks\\.ts$"] : []),
      ],
    },
  })),
);

const doors = FLOORS.flat().map((name) => ({
  name: `door-${name}`,
  comment: `shared/${name} is entered through its index.ts only`,
  severity: "error",
  from: { path: "^(shared|electron|renderer)/", pathNot: `^shared/${name}/` },
  to: { path: `^shared/${name}/`, pathNot: `^shared/${name}/index\\.ts$` },
}));

module.exports = {
  forbidden: [
    ...coreRules,
    ...doors,
    { name: "clocks", severity: "error", comment: "shared/clocks.ts joins the engines and stands below checks and exports", from: { path: "^shared/clocks\\.ts$" }, to: { path: "^shared/(checks|exports|imports|bridge)" } },
    { name: "core-stays-inside", severity: "error", comment: "the core knows neither Node nor screens", from: { path: "^shared/" }, to: { path: "^(electron|renderer|tests)/" } },
    { name: "core-has-no-node", severity: "error", comment: "the core is plain TypeScript", from: { path: "^shared/" }, to: { dependencyTypes: ["core"] } },
    { name: "renderer-has-no-node", severity: "error", comment: "the screens know the core and the bridge, never Node", from: { path: "^renderer/" }, to: { path: "^electron/", dependencyTypesNot: [] } },
    { name: "renderer-no-core-modules", severity: "error", from: { path: "^renderer/" }, to: { dependencyTypes: ["core"] } },
    { name: "electron-knows-no-screens", severity: "error", from: { path: "^electron/" }, to: { path: "^renderer/" } },
    { name: "no-circles", severity: "error", comment: "no import circles", from: {}, to: { circular: true } },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: { extensions: [".ts", ".tsx", ".mjs", ".cjs", ".js", ".json"], exportsFields: ["exports"], conditionNames: ["import", "require", "node", "default", "types"] },
  },
};
